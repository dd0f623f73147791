/* Times the supernodal Cholesky factorisation of CHOLMOD on one matrix.
 *
 *   factor_times MATRIX.mtx REPETITIONS
 *
 * Reads a symmetric positive definite matrix (Matrix Market) and prints, for AMD and for METIS,
 *
 *   ordering nnz(L) analyse_ms best_numeric_ms median_numeric_ms best_solve_ms residual
 *
 * and first of all a line that names the BLAS in use: with the reference BLAS, CHOLMOD is slow.
 *
 * All times are CPU times of this thread; set OMP_NUM_THREADS=1 and OPENBLAS_NUM_THREADS=1.
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>
#include <suitesparse/cholmod.h>

static double cpu_ms(void) {
  struct timespec t;
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
  return t.tv_sec * 1e3 + t.tv_nsec * 1e-6;
}

static int ascending(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

static double residual(cholmod_sparse *A, cholmod_dense *x, cholmod_dense *b, cholmod_common *c) {
  double one[2] = {1, 0}, minus[2] = {-1, 0};
  cholmod_dense *r = cholmod_copy_dense(b, c);
  cholmod_sdmult(A, 0, minus, one, x, r, c);
  double norm = cholmod_norm_dense(r, 0, c);
  cholmod_free_dense(&r, c);
  return norm;
}

static void run(cholmod_sparse *A, int ordering, const char *name, int repetitions) {
  cholmod_common c;
  cholmod_start(&c);
  c.supernodal = CHOLMOD_SUPERNODAL;
  c.nmethods = 1;
  c.method[0].ordering = ordering;
  double t = cpu_ms();
  cholmod_factor *L = cholmod_analyze(A, &c);
  double analyse = cpu_ms() - t;
  double *numeric = malloc(repetitions * sizeof(double));
  double solve = 1e300;
  cholmod_dense *b = cholmod_ones(A->nrow, 1, CHOLMOD_REAL, &c);
  double r = 0;
  for (int k = 0; k < repetitions; k++) {
    t = cpu_ms();
    cholmod_factorize(A, L, &c);
    numeric[k] = cpu_ms() - t;
    t = cpu_ms();
    cholmod_dense *x = cholmod_solve(CHOLMOD_A, L, b, &c);
    t = cpu_ms() - t;
    if (t < solve) solve = t;
    if (k == 0) r = residual(A, x, b, &c);
    cholmod_free_dense(&x, &c);
  }
  qsort(numeric, repetitions, sizeof(double), ascending);
  printf("%s %.0f %.4f %.4f %.4f %.4f %.2e\n", name, c.lnz, analyse, numeric[0],
         numeric[repetitions / 2], solve, r);
  free(numeric);
  cholmod_free_dense(&b, &c);
  cholmod_free_factor(&L, &c);
  cholmod_finish(&c);
}

static void print_blas(void) {
  char *(*config)(void) = (char *(*)(void))dlsym(RTLD_DEFAULT, "openblas_get_config");
  char *(*core)(void) = (char *(*)(void))dlsym(RTLD_DEFAULT, "openblas_get_corename");
  printf("BLAS %s %s\n", config ? config() : "reference or unknown", core ? core() : "");
}

int main(int argc, char **argv) {
  if (argc != 3) {
    fprintf(stderr, "usage: factor_times MATRIX.mtx REPETITIONS\n");
    return 2;
  }
  FILE *file = fopen(argv[1], "r");
  if (!file) {
    fprintf(stderr, "cannot read %s\n", argv[1]);
    return 2;
  }
  cholmod_common c;
  cholmod_start(&c);
  cholmod_sparse *A = cholmod_read_sparse(file, &c);
  fclose(file);
  if (!A || A->stype == 0) {
    fprintf(stderr, "%s is not a symmetric matrix\n", argv[1]);
    return 2;
  }
  print_blas();
  run(A, CHOLMOD_AMD, "AMD", atoi(argv[2]));
  run(A, CHOLMOD_METIS, "METIS", atoi(argv[2]));
  cholmod_free_sparse(&A, &c);
  cholmod_finish(&c);
  return 0;
}
