const mebibyte = 2 ** 20;

/** What a photo that is sent may weigh and measure. Chosen: the largest that telephones make by default, twice over. */
export const photoLimits = {
  bytes: 25 * mebibyte,
  /** Width times height: 8,000 by 8,000. Beyond it a small file may be a bomb that swells to gigabytes. */
  pixels: 64_000_000,
  /** As many as are taken at one go. */
  atOnce: 12,
} as const;

/** The longer side of the two sizes that are kept. */
export const photoSides = { large: 1600, thumb: 480 } as const;
