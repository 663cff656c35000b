import { layOver } from '../frame/layOver.tsx';
import { TodayStage } from './TodayStage.tsx';

/** Lays the front sheet over the window. */
export function showToday(): void {
  layOver((close) => <TodayStage close={close} />);
}
