/* A check that says where it failed, and the table of all formulas. */
#ifndef CHECK_H
#define CHECK_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <overwater.h>

#define CHECK(condition)                                                                                               \
    do {                                                                                                               \
        if (!(condition)) {                                                                                            \
            fprintf(stderr, "%s:%d: not so: %s\n", __FILE__, __LINE__, #condition);                                    \
            exit(1);                                                                                                   \
        }                                                                                                              \
    } while (0)

#define MOST_INPUTS 6

struct formula {
    const char *name;
    int inputs;
    int32_t (*number)(const double *values, double *result, ow_error *error);
    int32_t (*columns)(size_t count, const double *const *starts, const ptrdiff_t *strides, double *result,
                       ptrdiff_t stride, ow_error *error);
    double limits[2 * MOST_INPUTS];
};

/* Once for the functions behind the table, ... */
#define NUMBER(id, call)                                                                                               \
    static int32_t number_##id(const double *v, double *result, ow_error *error) { return call; }
#define COLUMNS(id, call)                                                                                              \
    static int32_t columns_##id(size_t count, const double *const *p, const ptrdiff_t *s, double *result,              \
                                ptrdiff_t stride, ow_error *error) {                                                   \
        return call;                                                                                                   \
    }
#define PLAIN1(f, name, a, A)                                                                                          \
    NUMBER(f, f(v[0], result, error)) COLUMNS(f, f##_array(count, p[0], s[0], result, stride, error))
#define PLAIN2(f, name, a, A, b, B)                                                                                    \
    NUMBER(f, f(v[0], v[1], result, error))                                                                            \
    COLUMNS(f, f##_array(count, p[0], s[0], p[1], s[1], result, stride, error))
#define PLAIN3(f, name, a, A, b, B, c, C)                                                                              \
    NUMBER(f, f(v[0], v[1], v[2], result, error))                                                                      \
    COLUMNS(f, f##_array(count, p[0], s[0], p[1], s[1], p[2], s[2], result, stride, error))
#define PLAIN4(f, name, a, A, b, B, c, C, d, D)                                                                        \
    NUMBER(f, f(v[0], v[1], v[2], v[3], result, error))                                                                \
    COLUMNS(f, f##_array(count, p[0], s[0], p[1], s[1], p[2], s[2], p[3], s[3], result, stride, error))
#define PLAIN5(f, name, a, A, b, B, c, C, d, D, e, E)                                                                  \
    NUMBER(f, f(v[0], v[1], v[2], v[3], v[4], result, error))                                                          \
    COLUMNS(f, f##_array(count, p[0], s[0], p[1], s[1], p[2], s[2], p[3], s[3], p[4], s[4], result, stride, error))
#define PLAIN6(f, name, a, A, b, B, c, C, d, D, e, E, g, G)                                                            \
    NUMBER(f, f(v[0], v[1], v[2], v[3], v[4], v[5], result, error))                                                    \
    COLUMNS(f, f##_array(count, p[0], s[0], p[1], s[1], p[2], s[2], p[3], s[3], p[4], s[4], p[5], s[5], result,        \
                         stride, error))
#define GAS1(f, name, gas, a, A)                                                                                       \
    NUMBER(f##_##gas, f(gas, v[0], result, error))                                                                     \
    COLUMNS(f##_##gas, f##_array(gas, count, p[0], s[0], result, stride, error))
#define GAS2(f, name, gas, a, A, b, B)                                                                                 \
    NUMBER(f##_##gas, f(gas, v[0], v[1], result, error))                                                               \
    COLUMNS(f##_##gas, f##_array(gas, count, p[0], s[0], p[1], s[1], result, stride, error))
#define GAS3(f, name, gas, a, A, b, B, c, C)                                                                           \
    NUMBER(f##_##gas, f(gas, v[0], v[1], v[2], result, error))                                                         \
    COLUMNS(f##_##gas, f##_array(gas, count, p[0], s[0], p[1], s[1], p[2], s[2], result, stride, error))
#include "formulas.h"
#undef PLAIN1
#undef PLAIN2
#undef PLAIN3
#undef PLAIN4
#undef PLAIN5
#undef PLAIN6
#undef GAS1
#undef GAS2
#undef GAS3

/* ... and once for its rows. */
#define PLAIN1(f, name, a, A) {name, 1, number_##f, columns_##f, {a, A}},
#define PLAIN2(f, name, a, A, b, B) {name, 2, number_##f, columns_##f, {a, A, b, B}},
#define PLAIN3(f, name, a, A, b, B, c, C) {name, 3, number_##f, columns_##f, {a, A, b, B, c, C}},
#define PLAIN4(f, name, a, A, b, B, c, C, d, D) {name, 4, number_##f, columns_##f, {a, A, b, B, c, C, d, D}},
#define PLAIN5(f, name, a, A, b, B, c, C, d, D, e, E)                                                                  \
    {name, 5, number_##f, columns_##f, {a, A, b, B, c, C, d, D, e, E}},
#define PLAIN6(f, name, a, A, b, B, c, C, d, D, e, E, g, G)                                                            \
    {name, 6, number_##f, columns_##f, {a, A, b, B, c, C, d, D, e, E, g, G}},
#define GAS1(f, name, gas, a, A) {name, 1, number_##f##_##gas, columns_##f##_##gas, {a, A}},
#define GAS2(f, name, gas, a, A, b, B) {name, 2, number_##f##_##gas, columns_##f##_##gas, {a, A, b, B}},
#define GAS3(f, name, gas, a, A, b, B, c, C)                                                                           \
    {name, 3, number_##f##_##gas, columns_##f##_##gas, {a, A, b, B, c, C}},
static const struct formula FORMULAS[] = {
#include "formulas.h"
};
#define FORMULA_COUNT (sizeof FORMULAS / sizeof FORMULAS[0])

/* A grid over the limits of a formula; tests/examples/formulas.rs has the same. */
#define ROWS 50
static inline double grid(const struct formula *formula, int input, int row) {
    const double least = formula->limits[2 * input], greatest = formula->limits[2 * input + 1];
    return least + (greatest - least) * ((double)((row * (7 + 2 * input)) % ROWS) / (ROWS - 1));
}

/* The bits of a number; one pattern for all that is not a number. */
static inline uint64_t bits(double value) {
    uint64_t pattern;
    memcpy(&pattern, &value, sizeof pattern);
    return value == value ? pattern : UINT64_C(0x7ff8000000000000);
}

#endif
