package auricle.anatomy;

/** The plan form at one place around: every column read once, for all shapes that pass there. */
final class PlanStation {
  private static final Form[] COLUMNS = Form.values();
  private final double around;
  private final double[] values = new double[COLUMNS.length];

  PlanStation(PlanForm form, double around) {
    this.around = around;
    for (Form column : COLUMNS) {
      values[column.ordinal()] = form.value(column, around);
    }
  }

  double around() {
    return around;
  }

  /** A column of the plan form as it stands. */
  double value(Form column) {
    return values[column.ordinal()];
  }
}
