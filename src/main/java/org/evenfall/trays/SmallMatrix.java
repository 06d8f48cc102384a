package org.evenfall.trays;

/**
 * Arithmetic on small matrices, some tens of rows, symmetric ones by their lower triangles, row i with i + 1 numbers. Own
 * code for speed: the general library copies each matrix with every step, and an estimate takes thousands of steps.
 */
final class SmallMatrix {

    private SmallMatrix() {}

    /** Replaces a positive definite matrix K, lower triangle, by its Cholesky root C, K = CC'. */
    static void decompose(double[][] lower) {
        for (int i = 0; i < lower.length; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = lower[i][j] - dot(lower[i], lower[j], j);
                lower[i][j] = i == j ? Math.sqrt(rest) : rest / lower[j][j];
            }
        }
    }

    /** Replaces a vector x by C⁻¹x. */
    static void solve(double[][] root, double[] vector) {
        for (int i = 0; i < vector.length; i++) {
            vector[i] = (vector[i] - dot(root[i], vector, i)) / root[i][i];
        }
    }

    /** Replaces a matrix X, as many rows as C, by C⁻¹X. */
    static void solve(double[][] root, double[][] matrix) {
        for (int i = 0; i < matrix.length; i++) {
            double[] row = matrix[i];
            for (int j = 0; j < i; j++) {
                addScaled(row, -root[i][j], matrix[j]);
            }
            for (int k = 0; k < row.length; k++) {
                row[k] /= root[i][i];
            }
        }
    }

    /** Adds factor × vector to a sum. */
    static void addScaled(double[] sum, double factor, double[] vector) {
        for (int k = 0; k < sum.length; k++) {
            sum[k] += factor * vector[k];
        }
    }

    /** Sum of the rows of a matrix, each times its factor. */
    static double[] combine(double[] factors, double[][] rows) {
        double[] sum = new double[rows[0].length];
        for (int i = 0; i < rows.length; i++) {
            addScaled(sum, factors[i], rows[i]);
        }
        return sum;
    }

    /** Number by number, one vector times the other. */
    static double[] times(double[] one, double[] other) {
        double[] product = new double[one.length];
        for (int k = 0; k < product.length; k++) {
            product[k] = one[k] * other[k];
        }
        return product;
    }

    /** Scalar product. */
    static double dot(double[] one, double[] other) {
        return dot(one, other, one.length);
    }

    /** Scalar product of the first so many numbers. */
    private static double dot(double[] one, double[] other, int length) {
        double sum = 0;
        for (int k = 0; k < length; k++) {
            sum += one[k] * other[k];
        }
        return sum;
    }

    /** Lower triangle of XY', where that is symmetric. */
    static double[][] products(double[][] one, double[][] other) {
        double[][] products = new double[one.length][];
        for (int i = 0; i < one.length; i++) {
            products[i] = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                products[i][j] = dot(one[i], other[j]);
            }
        }
        return products;
    }

    /** Trace of a symmetric matrix. */
    static double trace(double[][] lower) {
        double sum = 0;
        for (int i = 0; i < lower.length; i++) {
            sum += lower[i][i];
        }
        return sum;
    }

    /** Trace of the product of two symmetric matrices, lower triangles. */
    static double traceOfProduct(double[][] one, double[][] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += 2 * dot(one[i], other[i], i) + one[i][i] * other[i][i];
        }
        return sum;
    }

    /** A symmetric matrix with both triangles, from the lower one. */
    static double[][] full(double[][] lower) {
        double[][] full = new double[lower.length][lower.length];
        for (int i = 0; i < lower.length; i++) {
            for (int j = 0; j <= i; j++) {
                full[i][j] = lower[i][j];
                full[j][i] = lower[i][j];
            }
        }
        return full;
    }
}
