import { molarVolume_m3_mol, type Solvent } from './solvent.ts';

/** A solvent in a blend by liquid volume. Volumes add: the small change on mixing is left out. */
export interface BlendPart {
  readonly solvent: Solvent;
  /** Share of the blend's volume, 0 to 1. */
  readonly volumeFraction: number;
}

/** A solvent in a blend by moles. */
export interface MolePart {
  readonly solvent: Solvent;
  /** 0 to 1. */
  readonly moleFraction: number;
}

/** Shares by moles from shares by volume; they add to 1, whatever the volumes add to. Empty for an empty blend. */
export function moleFractions(parts: readonly BlendPart[]): MolePart[] {
  const moles = parts.map(({ solvent, volumeFraction }) => volumeFraction / molarVolume_m3_mol(solvent));
  const total = moles.reduce((sum, each) => sum + each, 0);
  return parts.map(({ solvent }, i) => ({ solvent, moleFraction: (moles[i] as number) / total }));
}

/** Shares by volume from shares by moles; they add to 1. */
export function volumeFractions(parts: readonly MolePart[]): BlendPart[] {
  const volumes = parts.map(({ solvent, moleFraction }) => moleFraction * molarVolume_m3_mol(solvent));
  const total = volumes.reduce((sum, each) => sum + each, 0);
  return parts.map(({ solvent }, i) => ({ solvent, volumeFraction: (volumes[i] as number) / total }));
}

/** One entry a solvent, in order of first naming, from blends weighted by `weight`. Zero shares are dropped. */
export function blended(blends: readonly { readonly parts: readonly BlendPart[]; readonly weight: number }[]): BlendPart[] {
  const shares = new Map<Solvent, number>();
  const total = blends.reduce((sum, { weight }) => sum + weight, 0);
  for (const { parts, weight } of blends) {
    for (const { solvent, volumeFraction } of parts) {
      shares.set(solvent, (shares.get(solvent) ?? 0) + (volumeFraction * weight) / total);
    }
  }
  return [...shares].filter(([, share]) => share > 0).map(([solvent, volumeFraction]) => ({ solvent, volumeFraction }));
}

/** Liquid density of a blend, kg/m³. */
export function blendDensity_kg_m3(parts: readonly BlendPart[]): number {
  return volumeMean(parts, (solvent) => solvent.density_kg_m3.value);
}

/** Mean over a blend by volume; NaN for an empty one. */
export function volumeMean(parts: readonly BlendPart[], of: (solvent: Solvent) => number): number {
  const total = parts.reduce((sum, { volumeFraction }) => sum + volumeFraction, 0);
  return parts.reduce((sum, { solvent, volumeFraction }) => sum + volumeFraction * of(solvent), 0) / total;
}
