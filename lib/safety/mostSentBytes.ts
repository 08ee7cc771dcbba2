/** What one write may weigh with everything in it: a dozen photos as telephones make them. Chosen. */
export const mostSentBytes = 60 * 2 ** 20;
