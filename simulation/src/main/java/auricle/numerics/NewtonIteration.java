package auricle.numerics;

/**
 * One line of the iteration table: the point an iteration began at, and the step that was then
 * tried.
 *
 * @param iteration counted from 0
 * @param value of the function (energy, mJ)
 * @param residual largest |g_i| / unit_i (N)
 * @param step length of the step tried from here, largest |δx_i| unit_i (mm); 0 at the end
 * @param shift s in K + s·diag|K|, 0 where K itself was used
 * @param negativePivots negative eigenvalues of K; -1 if its factorisation broke down
 * @param factorisations how many were made for this step
 * @param accepted whether the point was kept as a checkpoint: values of checkpoints never rise
 */
public record NewtonIteration(
    int iteration,
    double value,
    double residual,
    double step,
    double shift,
    int negativePivots,
    int factorisations,
    boolean accepted) {}
