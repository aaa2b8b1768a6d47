/* Reads a table of gas collected over water and writes a sheet: the dry amount and its volume at 0 degC and 101.325 kPa.
 *
 *   sheet readings.csv sheet.md
 *
 * The columns go to the library as fields of an array of structs, without copying. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <overwater.h>

struct reading {
    int group;
    double volume_cm3;
    double temperature_c;
    double pressure_kpa;
    double inside_minus_outside_mm;
    double amount_mmol;
};

#define HEADER "group,volume_cm3,temperature_c,pressure_kpa,inside_minus_outside_mm"

/* Reads the table; the number of rows, or -1 after a message. */
static long read_table(const char *path, struct reading **table) {
    char line[256];
    long count = 0;
    FILE *file = fopen(path, "r");
    *table = NULL;
    if (file == NULL) {
        perror(path);
        return -1;
    }
    if (fgets(line, sizeof line, file) == NULL || strncmp(line, HEADER, strlen(HEADER)) != 0) {
        fprintf(stderr, "%s: the first line must be %s\n", path, HEADER);
        count = -1;
    }
    while (count >= 0 && fgets(line, sizeof line, file) != NULL) {
        struct reading row = {0};
        struct reading *longer = realloc(*table, (size_t)(count + 1) * sizeof row);
        if (longer == NULL) {
            fputs("out of memory\n", stderr);
            count = -1;
            break;
        }
        *table = longer;
        if (sscanf(line, "%d,%lf,%lf,%lf,%lf", &row.group, &row.volume_cm3, &row.temperature_c, &row.pressure_kpa,
                   &row.inside_minus_outside_mm) != 5) {
            fprintf(stderr, "%s: line %ld is not %s\n", path, count + 2, HEADER);
            count = -1;
            break;
        }
        (*table)[count++] = row;
    }
    fclose(file);
    return count;
}

/* Why a row has no result: the function for one number says it. */
static void explain(FILE *sheet, const struct reading *row) {
    char message[512] = "";
    double amount_mmol;
    ow_error error = {0};
    error.size = sizeof error;
    error.message = message;
    error.message_capacity = sizeof message;
    if (ow_dry_amount(row->volume_cm3, row->temperature_c, row->pressure_kpa, row->inside_minus_outside_mm,
                      &amount_mmol, &error) != OW_OK) {
        fprintf(sheet, "\nGroup %d: %s.\n", row->group, message);
    }
}

int main(int argc, char **argv) {
    struct reading *table;
    const ptrdiff_t stride = sizeof *table;
    double molar_volume;
    FILE *sheet;
    long count, i;
    if (argc != 3) {
        fprintf(stderr, "usage: %s readings.csv sheet.md\n", argv[0]);
        return 2;
    }
    if (ow_abi_version() != OW_ABI_VERSION) {
        fputs("the library does not fit its header\n", stderr);
        return 1;
    }
    count = read_table(argv[1], &table);
    if (count <= 0) {
        free(table);
        return 1;
    }
    if (ow_dry_amount_array((size_t)count, &table->volume_cm3, stride, &table->temperature_c, stride,
                            &table->pressure_kpa, stride, &table->inside_minus_outside_mm, stride,
                            &table->amount_mmol, stride, NULL) != OW_OK ||
        ow_molar_volume(0.0, 101.325, &molar_volume, NULL) != OW_OK) {
        fputs("overwater refused the columns\n", stderr);
        free(table);
        return 1;
    }
    sheet = fopen(argv[2], "w");
    if (sheet == NULL) {
        perror(argv[2]);
        free(table);
        return 1;
    }
    fprintf(sheet, "# Gas collected over water\n\n"
                   "| group | dry amount / mmol | volume at 0 degC, 101.325 kPa / cm3 |\n| --- | --- | --- |\n");
    for (i = 0; i < count; i++) {
        if (isnan(table[i].amount_mmol)) {
            fprintf(sheet, "| %d | - | - |\n", table[i].group);
        } else {
            fprintf(sheet, "| %d | %.3f | %.1f |\n", table[i].group, table[i].amount_mmol,
                    table[i].amount_mmol * molar_volume);
        }
    }
    for (i = 0; i < count; i++) {
        explain(sheet, &table[i]);
    }
    free(table);
    return fclose(sheet) == 0 ? 0 : 1;
}
