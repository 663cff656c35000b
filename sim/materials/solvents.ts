import { CELSIUS_0_K } from '../base/units.ts';
import type { Place } from '../base/errors.ts';
import { diffusionVolume_cm3_mol, molarMass_kg_mol, type Formula } from './formula.ts';
import { knownEntry } from './known.ts';
import type { Solvent, VapourPressureLaw } from './solvent.ts';
import { ranged, single, type Sourced } from './sourced.ts';

const PA_PER_MMHG = 133.322387415;

const DENSITY = 'handbook value at 20 °C, from memory';
const LATENT = 'handbook enthalpy of vaporisation at 25 °C (CRC Handbook type of table), from memory';
const LATENT_NIST = 'NIST Chemistry WebBook, enthalpy of vaporisation at 25 °C';
const LATENT_WEAK = 'from memory, weakly known';
const STORED = 'Antoine constants of a stored public table (log10, bar, °C)';
const SMITH = 'Smith, Van Ness and Abbott, Introduction to Chemical Engineering Thermodynamics, table B.2';
const ANTOINE_MEMORY = 'Antoine constants (log10, mmHg, °C), from memory';
const P20 = 'makers’ sheets at 20 °C, from memory';
const SHEETS = 'solvent makers’ sheets, from memory';
const FLASH = 'flash point from the open chemicals library, version 1.5.2';
const FLASH_MEMORY = 'flash point, from memory';
const G11 = '29 CFR 1910.94 table G-11, from memory';
const NFPA = 'NFPA 497 by way of the open chemicals library, version 1.5.2 (lower than 29 CFR 1910.94 table G-11)';
const PEL = 'OSHA PEL, 29 CFR 1910.1000 table Z-1, as quoted by safety sheets';
const PEL_MEMORY = 'OSHA PEL, 29 CFR 1910.1000 table Z-1, from memory';
const TLV = 'ACGIH TLV as quoted by safety sheets';
const TLV_MEMORY = 'ACGIH TLV, from memory';

/** `log10 P[bar]` constants as a law in Pa and natural logarithms. */
function stored(a: number, b: number, c: number, from = ''): VapourPressureLaw {
  return { kind: 'antoine', a: a * Math.LN10 + Math.log(1e5), b: b * Math.LN10, c, source: STORED + from };
}

/** `ln P[kPa]` constants. */
function smith(a: number, b: number, c: number): VapourPressureLaw {
  return { kind: 'antoine', a: a + Math.log(1e3), b, c, source: SMITH };
}

/** `log10 P[mmHg]` constants. */
function remembered(a: number, b: number, c: number): VapourPressureLaw {
  return { kind: 'antoine', a: a * Math.LN10 + Math.log(PA_PER_MMHG), b: b * Math.LN10, c, source: ANTOINE_MEMORY };
}

/** One pressure at 20 °C. */
function at20(pressure_Pa: number): VapourPressureLaw {
  return { kind: 'reference', pressure_Pa, temperature_K: CELSIUS_0_K + 20, source: `${P20}; other temperatures by Clausius-Clapeyron from the latent heat` };
}

function flash(celsius: number, source = FLASH): Sourced {
  return single(celsius + CELSIUS_0_K, source);
}

type Given = Omit<Solvent, 'molarMass_kg_mol' | 'diffusionVolume_cm3_mol' | 'density_kg_m3'> & { readonly formula: Formula; readonly density: number };

function solvent({ formula, density, ...given }: Given): Solvent {
  return {
    ...given,
    molarMass_kg_mol: molarMass_kg_mol(formula),
    density_kg_m3: single(density, DENSITY),
    diffusionVolume_cm3_mol: diffusionVolume_cm3_mol(formula),
  };
}

/**
 * The solvents known, quick to slow. Relative evaporation tables disagree by a third between
 * sources; the method, ASTM D3539, was withdrawn in 2015 without a successor.
 */
export const SOLVENTS: readonly Solvent[] = [
  solvent({
    id: 'acetone', name: 'acetone', formula: { carbon: 3, hydrogen: 6, oxygen: 1 }, density: 791,
    vapourPressure: stored(4.35647, 1277.03, 237.23), latentHeat_J_mol: single(31.0e3, LATENT),
    relativeEvaporation: ranged(5.6, 5.6, 6.3, 'glossary of safety-sheet terms at ilpi.com (5.6); higher in makers’ sheets, from memory'),
    flashPoint_K: flash(-20), lowerExplosiveFraction: ranged(0.025, 0.025, 0.026, NFPA), oshaPel_ppm: single(1000, PEL), acgihTlv_ppm: ranged(250, 250, 500, TLV),
  }),
  solvent({
    id: 'methyl-acetate', name: 'methyl acetate', formula: { carbon: 3, hydrogen: 6, oxygen: 2 }, density: 932,
    vapourPressure: remembered(7.06524, 1157.63, 219.726), latentHeat_J_mol: single(32.3e3, LATENT),
    relativeEvaporation: ranged(5.2, 5.2, 6.2, SHEETS),
    flashPoint_K: flash(-10, FLASH_MEMORY), lowerExplosiveFraction: single(0.031, G11), oshaPel_ppm: single(200, PEL_MEMORY), acgihTlv_ppm: single(200, TLV_MEMORY),
  }),
  solvent({
    id: 'ethyl-acetate', name: 'ethyl acetate', formula: { carbon: 4, hydrogen: 8, oxygen: 2 }, density: 900,
    vapourPressure: stored(4.21248, 1238.15, 217.205), latentHeat_J_mol: single(35.6e3, LATENT),
    relativeEvaporation: ranged(4.1, 2.8, 4.1, `${SHEETS}; 2.8 in a public table`),
    flashPoint_K: flash(-4), lowerExplosiveFraction: ranged(0.02, 0.02, 0.025, NFPA), oshaPel_ppm: single(400, PEL), acgihTlv_ppm: single(400, TLV),
  }),
  solvent({
    id: 'mek', name: 'methyl ethyl ketone', formula: { carbon: 4, hydrogen: 8, oxygen: 1 }, density: 805,
    vapourPressure: remembered(7.06356, 1261.339, 221.969), latentHeat_J_mol: single(34.8e3, LATENT),
    relativeEvaporation: ranged(3.8, 3.8, 4.0, 'glossary of safety-sheet terms at ilpi.com (3.8); higher in makers’ sheets, from memory'),
    flashPoint_K: flash(-10), lowerExplosiveFraction: ranged(0.015, 0.015, 0.018, NFPA), oshaPel_ppm: single(200, PEL), acgihTlv_ppm: single(200, `${TLV}; lowered lately, from memory: look it up`),
  }),
  solvent({
    id: 'toluene', name: 'toluene', formula: { carbon: 7, hydrogen: 8, oxygen: 0, rings: 1 }, density: 867,
    vapourPressure: remembered(6.95464, 1344.8, 219.482), latentHeat_J_mol: single(38.0e3, LATENT),
    relativeEvaporation: ranged(1.9, 1.9, 2.0, SHEETS),
    flashPoint_K: flash(4), lowerExplosiveFraction: ranged(0.01, 0.01, 0.014, NFPA), oshaPel_ppm: single(200, PEL), acgihTlv_ppm: single(20, TLV),
  }),
  solvent({
    id: 'mibk', name: 'methyl isobutyl ketone', formula: { carbon: 6, hydrogen: 12, oxygen: 1 }, density: 801,
    vapourPressure: remembered(6.67272, 1168.408, 191.944), latentHeat_J_mol: single(40.6e3, LATENT),
    relativeEvaporation: ranged(1.6, 1.4, 1.6, SHEETS),
    flashPoint_K: flash(14, FLASH_MEMORY), lowerExplosiveFraction: ranged(0.012, 0.012, 0.014, 'NFPA 497, from memory'), oshaPel_ppm: single(100, PEL_MEMORY), acgihTlv_ppm: single(20, TLV_MEMORY),
  }),
  solvent({
    id: 'isopropanol', name: 'isopropyl alcohol', formula: { carbon: 3, hydrogen: 8, oxygen: 1 }, density: 785,
    vapourPressure: stored(5.24268, 1580.92, 219.61), latentHeat_J_mol: single(45.4e3, LATENT),
    relativeEvaporation: ranged(1.7, 1.5, 1.7, 'public evaporation-rate guide at aglayne.com (1.7); lower in makers’ sheets, from memory'),
    flashPoint_K: flash(12), lowerExplosiveFraction: single(0.02, G11), oshaPel_ppm: single(400, PEL_MEMORY), acgihTlv_ppm: single(200, TLV_MEMORY),
  }),
  solvent({
    id: 'ethanol', name: 'ethyl alcohol', formula: { carbon: 2, hydrogen: 6, oxygen: 1 }, density: 789,
    vapourPressure: smith(16.8958, 3795.17, 230.918), latentHeat_J_mol: single(42.3e3, LATENT),
    relativeEvaporation: ranged(1.4, 1.4, 1.7, 'glossary of safety-sheet terms at ilpi.com (95 % ethanol, 1.4); higher in makers’ sheets, from memory'),
    flashPoint_K: flash(12), lowerExplosiveFraction: ranged(0.031, 0.031, 0.043, NFPA), oshaPel_ppm: single(1000, PEL), acgihTlv_ppm: single(1000, `${TLV}, short-term`),
  }),
  solvent({
    id: 'n-butyl-acetate', name: 'n-butyl acetate', formula: { carbon: 6, hydrogen: 12, oxygen: 2 }, density: 882,
    vapourPressure: stored(4.1564, 1371.13, 204.273, ', fitted from 53 °C, extrapolated below'), latentHeat_J_mol: single(43.6e3, LATENT_NIST),
    relativeEvaporation: single(1, 'the unit of the scale'),
    flashPoint_K: flash(22), lowerExplosiveFraction: ranged(0.012, 0.012, 0.017, NFPA), oshaPel_ppm: single(150, PEL), acgihTlv_ppm: ranged(50, 50, 150, TLV_MEMORY),
  }),
  solvent({
    id: 'm-xylene', name: 'xylene', formula: { carbon: 8, hydrogen: 10, oxygen: 0, rings: 1 }, density: 864,
    vapourPressure: stored(4.13785, 1465.39, 215.512, ', fitted from 36 °C, extrapolated below'), latentHeat_J_mol: single(42.7e3, LATENT),
    relativeEvaporation: ranged(0.7, 0.6, 0.8, 'glossary of safety-sheet terms at ilpi.com (0.6), guide at aglayne.com (0.7)'),
    flashPoint_K: flash(30), lowerExplosiveFraction: single(0.01, `${G11} (o-xylene)`), oshaPel_ppm: single(100, PEL), acgihTlv_ppm: ranged(20, 20, 100, TLV_MEMORY),
  }),
  solvent({
    id: 'n-butanol', name: 'n-butyl alcohol', formula: { carbon: 4, hydrogen: 10, oxygen: 1 }, density: 810,
    vapourPressure: smith(15.3144, 3212.43, 182.739), latentHeat_J_mol: single(52.4e3, LATENT_NIST),
    relativeEvaporation: ranged(0.44, 0.3, 0.46, `${SHEETS}; 0.3 in a public table`),
    flashPoint_K: flash(35), lowerExplosiveFraction: single(0.014, G11), oshaPel_ppm: single(100, PEL_MEMORY), acgihTlv_ppm: single(20, TLV),
  }),
  solvent({
    id: 'pm-acetate', name: 'propylene glycol methyl ether acetate', formula: { carbon: 6, hydrogen: 12, oxygen: 3 }, density: 967,
    vapourPressure: at20(370), latentHeat_J_mol: ranged(48e3, 43e3, 53e3, LATENT_WEAK),
    relativeEvaporation: ranged(0.36, 0.33, 0.4, `${SHEETS}; 0.4 in the guide at aglayne.com`),
    flashPoint_K: flash(42, FLASH_MEMORY), lowerExplosiveFraction: single(0.013, 'makers’ sheets, from memory'), oshaPel_ppm: null, acgihTlv_ppm: null,
  }),
  solvent({
    id: 'diacetone-alcohol', name: 'diacetone alcohol', formula: { carbon: 6, hydrogen: 12, oxygen: 2 }, density: 938,
    vapourPressure: at20(108), latentHeat_J_mol: ranged(51e3, 45e3, 57e3, LATENT_WEAK),
    relativeEvaporation: ranged(0.13, 0.12, 0.15, SHEETS),
    flashPoint_K: flash(58), lowerExplosiveFraction: single(0.018, 'NFPA 497 by way of the open chemicals library, version 1.5.2'), oshaPel_ppm: single(50, PEL_MEMORY), acgihTlv_ppm: single(50, TLV),
  }),
  solvent({
    id: 'egbe', name: 'ethylene glycol monobutyl ether', formula: { carbon: 6, hydrogen: 14, oxygen: 2 }, density: 901,
    vapourPressure: at20(80), latentHeat_J_mol: ranged(56e3, 50e3, 60e3, LATENT_WEAK),
    relativeEvaporation: ranged(0.075, 0.07, 0.08, SHEETS),
    flashPoint_K: flash(62, FLASH_MEMORY), lowerExplosiveFraction: single(0.011, G11), oshaPel_ppm: single(50, PEL_MEMORY), acgihTlv_ppm: single(20, TLV_MEMORY),
  }),
];

/** A solvent by its id. @throws CrosscoatError `schema` for an unknown one. */
export function solventById(id: string, place?: Place): Solvent {
  return knownEntry(SOLVENTS, id, 'solvent', place);
}
