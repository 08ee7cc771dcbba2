import { contentHash } from "../keeping/contentHash";

/** Half the digits of SHA-256: two photos of one job will not share them. */
const nameDigits = 32;

/** The name of a photo's file, made from the bytes of its large size. */
export const nameOfPhoto = (large: Uint8Array) => `${contentHash(large).slice(0, nameDigits)}.jpg`;
