import { describeWindow, mapWindow, overlapRipple, sensitivities, settleSide, usualRange, type CoatSetting, type WindowAxis, type WindowSide } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';
import type { SetUpRequest } from './setUpMessages.ts';

/** What the worker does for the working window. Nothing is kept between questions. */
export function makeWindowHandlers(): Pick<Handlers, 'windowMap' | 'windowAround'> {
  return {
    windowMap: ({ plane, axes: [x, y], count, ...asked }) => {
      const setting = settingOf(asked);
      const sides = plane ?? { x: usualSide(setting, x), y: usualSide(setting, y) };
      const map = mapWindow(setting, { x: { ...sides.x, count }, y: { ...sides.y, count } });
      return Promise.resolve({ reply: { coatName: setting.coat.name, setUpName: setting.setUp.name, map, description: describeWindow(map) } });
    },
    windowAround: ({ point, ...asked }) => {
      const setting = settingOf(asked);
      const reply = { sensitivities: sensitivities(setting, point === undefined ? {} : { point }), overlaps: overlapRipple(setting), width_m: setting.setUp.fan.width_m };
      return Promise.resolve({ reply });
    },
  };
}

function settingOf({ job, coat, setUp }: SetUpRequest): CoatSetting {
  return settleSide(job, coat, setUp, 'as-stated', job.cell_mm);
}

function usualSide(setting: CoatSetting, axis: WindowAxis): Omit<WindowSide, 'count'> {
  const [low, high] = usualRange(setting, axis);
  return { axis, low, high };
}
