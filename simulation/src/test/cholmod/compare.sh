#!/bin/sh
# Numeric factorisation side by side with CHOLMOD, one thread, one table of ratios.
# Needs gcc, libsuitesparse-dev and libopenblas0-pthread, and the project compiled with its tests.
# Run from the root. With the reference BLAS in place of OpenBLAS, CHOLMOD takes about twice as long.
set -e
here=simulation/src/test/cholmod
out=simulation/target/cholmod
mkdir -p "$out"
gcc -O2 -o "$out/factor_times" "$here/factor_times.c" -lcholmod -ldl
export OMP_NUM_THREADS=1 OPENBLAS_NUM_THREADS=1
mvn -q -B -pl simulation dependency:build-classpath -Dmdep.outputFile=target/cholmod/classpath
java -cp "simulation/target/classes:simulation/target/test-classes:$(cat "$out/classpath")" \
  auricle.numerics.FactorisationComparison "$out"
