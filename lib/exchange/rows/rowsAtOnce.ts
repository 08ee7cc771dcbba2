/** As many rows as are sent at once, so that progress shows and a stop is heeded soon. Chosen. */
export const rowsAtOnce = 50;
