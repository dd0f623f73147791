package auricle.viewer.task;

/**
 * Spread of a figure at a time: 10 and 90 of 100 samples lie below.
 *
 * @param days since the operation
 * @param figure key of the figure, with unit
 * @param low 10 %, in the figure's unit
 * @param high 90 %, in the figure's unit
 */
public record Band(double days, String figure, double low, double high) {}
