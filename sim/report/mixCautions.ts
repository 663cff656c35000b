/**
 * Shown where a mix is made. After AC 43.13-1B table 2-3 (no electric drill, bonding, cotton clothes) and paragraph 2-20a (unknown
 * dope), the work rules for spray finishing with flammable materials (29 CFR 1910.107 and its state copies) and 29 CFR 1910.134
 * for respirators, in our own words.
 */
export const MIX_CAUTIONS: readonly string[] = [
  'No flame, spark or hot surface where cans are open: solvent vapour is heavier than air, runs along the floor and can be lit from afar.',
  'Bond the can and the pot to each other and to earth before you pour. Metal vessels, never glass or open ones.',
  'Stir by hand or with an air tool. Never with an electric drill: its brushes spark.',
  'Run the exhaust fan and keep the room open to it while you mix. A room far below the explosive limit can already be unfit to breathe.',
  'Wear an organic-vapour respirator with a particulate prefilter at least, gloves that the solvent does not pass, eye cover, cotton and no synthetics.',
  'Close every can at once. Rags go into a closed metal can that is emptied each day. No more liquid in the room than the day needs.',
  'Keep cellulose nitrate, and what is left of it, apart from other finishes: its dried residue burns fast and can heat itself.',
  'Use the maker’s own thinner, and no other in its place. Dope of unknown kind or age must not be used.',
  'On certified work the approved process and the product data sheet say ratio and thinner. They go before this sheet.',
];
