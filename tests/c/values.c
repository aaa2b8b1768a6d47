/* Every formula over its grid: what one number gives is printed, and columns must give the same bits wherever they lie. */
#include <inttypes.h>
#include <locale.h>

#include "check.h"

/* Columns in structs at an odd address, gone through backwards, written over the first input. */
static void same_in_columns(const struct formula *formula, const double *expected) {
    const ptrdiff_t stride = 8 * (MOST_INPUTS + 1) + 3;
    unsigned char *block = malloc((size_t)stride * ROWS + 1);
    const double *starts[MOST_INPUTS];
    ptrdiff_t strides[MOST_INPUTS];
    int input, row, backwards;
    CHECK(block != NULL);
    for (backwards = 0; backwards < 2; backwards++) {
        unsigned char *first = block + 1 + (backwards ? stride * (ROWS - 1) : 0);
        const ptrdiff_t step = backwards ? -stride : stride;
        for (input = 0; input < formula->inputs; input++) {
            starts[input] = (const double *)(const void *)(first + 8 * input);
            strides[input] = step;
            for (row = 0; row < ROWS; row++) {
                const double value = grid(formula, input, row);
                memcpy(first + row * step + 8 * input, &value, sizeof value);
            }
        }
        CHECK(formula->columns(ROWS, starts, strides, (double *)(void *)first, step, NULL) == OW_OK);
        for (row = 0; row < ROWS; row++) {
            double found;
            memcpy(&found, first + row * step, sizeof found);
            CHECK(bits(found) == bits(expected[row]));
        }
    }
    free(block);
}

/* Plain arrays, each of exactly its length, so that a sanitizer sees a step beyond. */
static void same_in_arrays(const struct formula *formula, const double *expected) {
    double *memory[MOST_INPUTS];
    double *result = malloc(ROWS * sizeof *result);
    const double *starts[MOST_INPUTS];
    ptrdiff_t strides[MOST_INPUTS];
    int input, row;
    CHECK(result != NULL);
    for (input = 0; input < formula->inputs; input++) {
        memory[input] = malloc(ROWS * sizeof(double));
        CHECK(memory[input] != NULL);
        for (row = 0; row < ROWS; row++) {
            memory[input][row] = grid(formula, input, row);
        }
        starts[input] = memory[input];
        strides[input] = sizeof(double);
    }
    CHECK(formula->columns(ROWS, starts, strides, result, sizeof(double), NULL) == OW_OK);
    for (row = 0; row < ROWS; row++) {
        CHECK(bits(result[row]) == bits(expected[row]));
    }
    for (input = 0; input < formula->inputs; input++) {
        free(memory[input]);
    }
    free(result);
}

int main(void) {
    size_t place;
    /* With a decimal comma where the environment asks for one; nothing may depend on it. */
    const char *locale = setlocale(LC_ALL, "");
    fprintf(stderr, "locale %s, decimal sign %s\n", locale ? locale : "(none)", localeconv()->decimal_point);
    for (place = 0; place < FORMULA_COUNT; place++) {
        const struct formula *formula = &FORMULAS[place];
        double expected[ROWS];
        int row, input, numbers = 0;
        for (row = 0; row < ROWS; row++) {
            double values[MOST_INPUTS];
            int32_t status;
            for (input = 0; input < formula->inputs; input++) {
                values[input] = grid(formula, input, row);
            }
            status = formula->number(values, &expected[row], NULL);
            CHECK((status == OW_OK) == (expected[row] == expected[row]));
            numbers += status == OW_OK;
            printf("%s %d %016" PRIx64 "\n", formula->name, row, bits(expected[row]));
        }
        CHECK(numbers > 0);
        same_in_columns(formula, expected);
        same_in_arrays(formula, expected);
    }
    return 0;
}
