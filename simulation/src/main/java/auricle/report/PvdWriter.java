package auricle.report;

import java.util.List;

/** A ParaView collection (.pvd) that strings the files of all load steps together. */
public final class PvdWriter {
  private PvdWriter() {}

  /**
   * One file of a collection.
   *
   * @param time place in the order; the load factor need not grow
   * @param file relative to the collection
   */
  public record Member(double time, String file) {}

  /** The file. */
  public static String write(List<Member> members) {
    StringBuilder xml = new StringBuilder("<?xml version=\"1.0\"?>\n");
    xml.append("<VTKFile type=\"Collection\" version=\"0.1\">\n<Collection>\n");
    for (Member m : members) {
      xml.append("<DataSet timestep=\"").append(m.time()).append("\" part=\"0\" file=\"");
      xml.append(m.file()).append("\"/>\n");
    }
    return xml.append("</Collection>\n</VTKFile>\n").toString();
  }
}
