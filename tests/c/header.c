/* The header alone must compile. */
#include <overwater.h>

int header_is_complete(void);
int header_is_complete(void) { return OW_OK; }
