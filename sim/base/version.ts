/** Version of this program, as its package states it: a record says by which one it was made. */
export const CROSSCOAT_VERSION = '0.1.0';
