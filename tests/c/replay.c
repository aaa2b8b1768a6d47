/* The conversation vectors through ow_respond: each request must give its answer, to the byte.
 *
 *   replay tests/vectors/[name].request.json ... */
#include "check.h"

/* A whole file with a NUL behind it. */
static char *contents(const char *path, size_t *length) {
    FILE *file = fopen(path, "rb");
    char *text;
    long size;
    if (file == NULL) {
        perror(path);
        exit(1);
    }
    CHECK(fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0 && fseek(file, 0, SEEK_SET) == 0);
    *length = (size_t)size;
    text = malloc(*length + 1);
    CHECK(text != NULL && fread(text, 1, *length, file) == *length && fclose(file) == 0);
    text[*length] = '\0';
    return text;
}

int main(int argc, char **argv) {
    static const char ending[] = ".request.json";
    int place;
    for (place = 1; place < argc; place++) {
        char path[4096];
        size_t length, expected_length, needed, stem = strlen(argv[place]) - strlen(ending);
        char *request = contents(argv[place], &length), *expected, *answer;
        int32_t status;
        CHECK(stem < sizeof path - 32 && strcmp(argv[place] + stem, ending) == 0);
        sprintf(path, "%.*s.answer.json", (int)stem, argv[place]);
        expected = contents(path, &expected_length);
        if (expected_length > 0 && expected[expected_length - 1] == '\n') {
            expected[--expected_length] = '\0';
        }
        /* Room for just the answer, so that a byte beyond would be seen. */
        answer = malloc(expected_length + 1);
        CHECK(answer != NULL);
        status = ow_respond(request, length, answer, expected_length + 1, &needed, NULL);
        if ((status != OW_OK && status != OW_REFUSED) || needed != expected_length + 1 ||
            memcmp(answer, expected, needed) != 0) {
            fprintf(stderr, "%s: another answer (status %d)\n", argv[place], (int)status);
            return 1;
        }
        CHECK((status == OW_REFUSED) == (strstr(expected, "\"error\":{") != NULL));
        free(request);
        free(expected);
        free(answer);
    }
    printf("%d requests\n", argc - 1);
    return argc > 60 ? 0 : 1;
}
