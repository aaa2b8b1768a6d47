/* Eight threads call every function at once, and each result is that of one thread alone.
 *
 *   threads CALLS      calls of every function in each thread */
#include <pthread.h>

#include "check.h"

#define THREADS 8

static const char REQUEST[] = "{\"format\": 1, \"task\": \"weigh\", \"request\": {\"format\": 1, \"formula\": \"CuSO4\"}}";

static long calls;
static double values[FORMULA_COUNT][ROWS][MOST_INPUTS];
static uint64_t alone[FORMULA_COUNT][ROWS];
static char answer_alone[65536];

static void respond(char *answer) {
    size_t needed;
    CHECK(ow_respond(REQUEST, strlen(REQUEST), answer, sizeof answer_alone, &needed, NULL) == OW_OK);
}

static void *work(void *argument) {
    const size_t first = *(const size_t *)argument;
    char *answer = malloc(sizeof answer_alone);
    size_t step;
    long call;
    CHECK(answer != NULL);
    for (step = 0; step < FORMULA_COUNT; step++) {
        /* Each thread begins with another function. */
        const size_t place = (first * 17 + step) % FORMULA_COUNT;
        const struct formula *formula = &FORMULAS[place];
        for (call = 0; call < calls; call++) {
            double result;
            formula->number(values[place][call % ROWS], &result, NULL);
            CHECK(bits(result) == alone[place][call % ROWS]);
        }
        for (call = 0; call < calls; call += ROWS * 20) {
            const double *starts[MOST_INPUTS];
            ptrdiff_t strides[MOST_INPUTS];
            double results[ROWS];
            int input, row;
            for (input = 0; input < formula->inputs; input++) {
                starts[input] = &values[place][0][input];
                strides[input] = sizeof values[place][0];
            }
            CHECK(formula->columns(ROWS, starts, strides, results, sizeof results[0], NULL) == OW_OK);
            for (row = 0; row < ROWS; row++) {
                CHECK(bits(results[row]) == alone[place][row]);
            }
        }
        respond(answer);
        CHECK(strcmp(answer, answer_alone) == 0);
    }
    free(answer);
    return NULL;
}

int main(int argc, char **argv) {
    pthread_t threads[THREADS];
    size_t numbers[THREADS];
    size_t place, thread;
    CHECK(argc == 2 && (calls = atol(argv[1])) >= ROWS);
    for (place = 0; place < FORMULA_COUNT; place++) {
        int row, input;
        for (row = 0; row < ROWS; row++) {
            double result;
            for (input = 0; input < FORMULAS[place].inputs; input++) {
                values[place][row][input] = grid(&FORMULAS[place], input, row);
            }
            FORMULAS[place].number(values[place][row], &result, NULL);
            alone[place][row] = bits(result);
        }
    }
    respond(answer_alone);
    for (thread = 0; thread < THREADS; thread++) {
        numbers[thread] = thread;
        CHECK(pthread_create(&threads[thread], NULL, work, &numbers[thread]) == 0);
    }
    for (thread = 0; thread < THREADS; thread++) {
        CHECK(pthread_join(threads[thread], NULL) == 0);
    }
    printf("%d threads, %lu formulas, %ld calls of each\n", THREADS, (unsigned long)FORMULA_COUNT, calls);
    return 0;
}
