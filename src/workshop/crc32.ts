/** Reversed polynomial of ISO 3309 and of the zip format. */
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = (rest >>> 1) ^ (rest & 1 ? POLYNOMIAL : 0);
  return rest;
});

/** CRC-32 of bytes as a zip states it, 0 to 2³² − 1. The unpacking package does not check it, and it is what tells a damaged file from an edited one. */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) rest = (rest >>> 8) ^ (TABLE[(rest ^ (bytes[i] as number)) & 0xff] as number);
  return (rest ^ 0xffffffff) >>> 0;
}
