const polynomial = 0xedb88320;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? polynomial ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/**
 * The check sum that a zip keeps of each file.
 *
 * @returns a whole number of 32 bits, not negative
 * @example crc32(Buffer.from("123456789")) // 0xcbf43926
 * Source: RFC 1952, section 8; the check value is that of CRC-32/ISO-HDLC.
 */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (table[(rest ^ byte) & 0xff] ?? 0) ^ (rest >>> 8);
  return (rest ^ 0xffffffff) >>> 0;
}
