/* What is wrong is told, and what is told is right. */
#include "check.h"

static const char REQUEST[] = "{\"format\": 1, \"task\": \"weigh\", \"request\": {\"format\": 1, \"formula\": \"H2O2\"}}";

static ow_error fresh(char *message, size_t capacity) {
    ow_error error;
    memset(&error, 0, sizeof error);
    error.size = sizeof error;
    error.message = message;
    error.message_capacity = capacity;
    return error;
}

static void numbers(void) {
    char message[256];
    double result = 1.0;
    ow_error error = fresh(message, sizeof message);
    unsigned char odd[sizeof(ow_error) + 8];

    CHECK(ow_vapour_pressure(150.0, &result, &error) == OW_OUT_OF_RANGE);
    CHECK(result != result && error.status == OW_OUT_OF_RANGE && error.value == 150.0);
    CHECK(strcmp(error.code, "out_of_range") == 0 && strcmp(error.parameter, "temperature_c") == 0);
    CHECK(strncmp(message, "temperature_c = 150 degC is out of range; allowed: 0 to 100 degC", 64) == 0);
    CHECK(error.message_needed == strlen(message) + 1);

    CHECK(ow_vapour_pressure(result, &result, &error) == OW_NOT_A_NUMBER);
    CHECK(ow_dry_amount(50.0, 99.0, 90.0, 0.0, &result, &error) == OW_CONTRADICTION);
    CHECK(ow_stock_volume(1.0, 2.0, 100.0, &result, &error) == OW_CANNOT_BE_MET && error.value == 2.0);
    CHECK(ow_second_virial(0, 20.0, &result, &error) == OW_UNKNOWN_NAME);
    CHECK(ow_second_virial(OW_GAS_OZONE, 20.0, &result, &error) == OW_CANNOT_BE_MET);
    CHECK(ow_vapour_pressure(20.0, NULL, &error) == OW_NULL && strcmp(error.code, "null") == 0);
    CHECK(ow_vapour_pressure(20.0, NULL, NULL) == OW_NULL);

    /* A buffer that is too short gets what fits; what is left over says how long it should have been. */
    memset(message, 'x', sizeof message);
    error = fresh(message, 14);
    CHECK(ow_vapour_pressure(150.0, &result, &error) == OW_OUT_OF_RANGE);
    CHECK(strcmp(message, "temperature_c") == 0 && message[14] == 'x' && error.message_needed > 60);
    error = fresh(NULL, 100);
    CHECK(ow_vapour_pressure(150.0, &result, &error) == OW_OUT_OF_RANGE && error.message_needed > 60);

    /* Numbers may stand anywhere, structs may not. */
    CHECK(ow_vapour_pressure(20.0, (double *)(void *)(odd + 1), NULL) == OW_OK);
    memcpy(&result, odd + 1, sizeof result);
    CHECK(result > 2.338 && result < 2.340); /* CRC Handbook: 2.3388 kPa */
    CHECK(ow_vapour_pressure(20.0, &result, (ow_error *)(void *)(odd + 1)) == OW_MISALIGNED);
    error = fresh(NULL, 0);
    error.size--;
    CHECK(ow_vapour_pressure(20.0, &result, &error) == OW_STRUCT_SIZE);
    CHECK(ow_error_size() == sizeof(ow_error) && ow_abi_version() == OW_ABI_VERSION);
    CHECK(strstr(ow_build_info(), ow_version()) != NULL);
}

static void columns(void) {
    double temperature[4] = {20.0, 150.0, 0.0, 100.0};
    double result[4] = {5.0, 5.0, 5.0, 5.0};
    int row;
    CHECK(ow_vapour_pressure_array(0, NULL, 0, NULL, 0, NULL) == OW_OK);
    CHECK(ow_vapour_pressure_array(4, NULL, 8, result, 8, NULL) == OW_NULL);
    CHECK(ow_vapour_pressure_array(4, temperature, 8, NULL, 8, NULL) == OW_NULL);
    CHECK(ow_vapour_pressure_array(4, temperature, 1, result, 8, NULL) == OW_STRIDE);
    CHECK(ow_vapour_pressure_array(4, temperature, 8, result, 0, NULL) == OW_STRIDE);
    CHECK(ow_vapour_pressure_array(3, temperature, 8, temperature + 1, 8, NULL) == OW_OVERLAP);
    CHECK(ow_vapour_pressure_array(SIZE_MAX, temperature, 8, result, 8, NULL) == OW_OVERSIZE);
    CHECK(ow_vapour_pressure_array(2, temperature, PTRDIFF_MAX, result, 8, NULL) == OW_OVERSIZE);
    CHECK(ow_second_virial_array(-1, 4, temperature, 8, result, 8, NULL) == OW_UNKNOWN_NAME);
    for (row = 0; row < 4; row++) {
        CHECK(result[row] == 5.0);
    }
    CHECK(ow_vapour_pressure_array(4, temperature, 8, result, 8, NULL) == OW_OK);
    CHECK(result[0] == result[0] && result[1] != result[1] && result[2] == result[2] && result[3] == result[3]);
    CHECK(ow_vapour_pressure_array(1, temperature, 1, result, 0, NULL) == OW_OK);
}

static void requests(void) {
    char small[8] = "untouch";
    size_t needed = 0;
    char *answer, *deep;
    const size_t depth = 10000;
    CHECK(ow_respond(REQUEST, strlen(REQUEST), NULL, 0, &needed, NULL) == OW_BUFFER_TOO_SMALL && needed > 100);
    CHECK(ow_respond(REQUEST, strlen(REQUEST), small, sizeof small, &needed, NULL) == OW_BUFFER_TOO_SMALL);
    CHECK(strcmp(small, "untouch") == 0);
    answer = malloc(needed);
    CHECK(answer != NULL);
    CHECK(ow_respond(REQUEST, strlen(REQUEST), answer, needed, &needed, NULL) == OW_OK);
    CHECK(strlen(answer) == needed - 1 && strstr(answer, "34.014") != NULL);
    puts(answer);
    CHECK(ow_respond(REQUEST, 10, answer, needed, &needed, NULL) != OW_OK);
    free(answer);
    deep = malloc(depth);
    answer = malloc(65536);
    CHECK(deep != NULL && answer != NULL);
    memset(deep, '[', depth);
    CHECK(ow_respond(deep, depth, answer, 65536, &needed, NULL) == OW_REFUSED && strstr(answer, "error") != NULL);
    CHECK(ow_respond("\0\xff", 2, answer, 65536, &needed, NULL) == OW_REFUSED);
    CHECK(ow_respond(NULL, 0, answer, 65536, &needed, NULL) == OW_REFUSED);
    CHECK(ow_respond(NULL, 1, answer, 65536, &needed, NULL) == OW_NULL && needed == 0);
    CHECK(ow_respond(REQUEST, SIZE_MAX, answer, 65536, &needed, NULL) == OW_OVERSIZE);
    free(deep);
    free(answer);
}

int main(void) {
    numbers();
    columns();
    requests();
    return 0;
}
