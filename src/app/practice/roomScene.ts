import { colourTable, type CoatSetting, type LiveValue, type ShownFilm } from '../../../sim/index.ts';
import type { SprayScene, WetScene } from '../../canvas/spray/sprayScene.ts';

/** How a room looks, besides the film. */
export interface RoomLook {
  readonly value: LiveValue;
  readonly guides: boolean;
  readonly pace: boolean;
  readonly theme: 'light' | 'dark';
}

/** Colours of the film as it lies now run to this many times the target. */
export const NOW_SPAN = 1.6;
/** Beside the panel there is room for the gun to be moving before the trigger is pulled. */
const SIDE_M = 0.02;

/** What stands still while a panel is sprayed. @param guides the planned lines. */
export function sprayScene(setting: CoatSetting, shown: ShownFilm, look: RoomLook, guides: readonly Float64Array[]): SprayScene {
  const { outline, holes, width_m, height_m, attitude } = setting.panel;
  const side_m = setting.plan.lead_m + SIDE_M;
  return {
    panel: { outline, holes, width_m, height_m, down_rad: Math.sin(attitude.tilt_rad) < 1e-6 ? null : attitude.down_rad },
    fit_m: [-side_m, -side_m, width_m + side_m, height_m + side_m],
    wet: wetScene(setting, shown, look.value),
    guides: look.guides ? guides : [],
    theme: look.theme,
  };
}

function wetScene({ panelGrid, target }: CoatSetting, { value, look }: ShownFilm, kind: LiveValue): WetScene {
  const isNow = kind === 'wet-now';
  return {
    ...panelGrid.grid,
    values: value,
    look,
    cover: panelGrid.cover,
    domain: isNow ? [0, NOW_SPAN * target.thickness_m] : [0, 2],
    colours: colourTable(isNow ? 'film' : 'target'),
  };
}
