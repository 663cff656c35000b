/** What every output says of itself. */
export const ESTIMATE_STATEMENT =
  'A teaching and planning estimate: absolute film is within ±30 % at best until the fan, the fluid rate and the transfer are measured; one stroke against another is much better. ' +
  'It defers to the product data sheet, the approved process, local codes and the inspector; ' +
  'it never calls a room safe, a booth legal or a repair airworthy, and it is no gauge reading.';

/**
 * Shown once before a spray. After the work rules for spray finishing with flammable materials,
 * 29 CFR 1910.107 and its state copies, and 29 CFR 1910.134 for respirators, in our own words.
 */
export const SPRAY_CAUTIONS: readonly string[] = [
  'Earth the part and bond the vessels; no ignition source within 20 ft (6 m) of the spraying area; exhaust fan on before the gun.',
  'Wear an organic-vapour respirator with a particulate prefilter at least, air-supplied for two-part material; cotton, not synthetics.',
  'Dried cellulose nitrate overspray burns fast and can heat itself: keep it apart from other residues, rags in closed metal cans.',
];
