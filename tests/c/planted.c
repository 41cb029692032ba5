/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* A program with a fault, for the runner to see that its tools find one: `leak` loses a block, else it writes
   one byte behind a block. */
#include <stdlib.h>
#include <string.h>

#include "threadcalc.h"

int main(int count, char **words)
{
    size_t needed = 0;
    char *text = malloc(15);

    if (text == NULL || count < 2) {
        free(text);
        return 0;
    }
    if (strcmp(words[1], "leak") == 0) {
        char *volatile lost = text;
        lost = NULL;
        return lost != NULL;
    }
    /* Fifteen bytes with the NUL: the next one is not ours. */
    (void)threadcalc_write_number(&(threadcalc_ratio_t){1234567890123, 100}, text, 15, &needed, NULL);
    text[needed] = 'x';
    free(text);
    return 0;
}
