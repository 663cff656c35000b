import { layOver } from '../frame/layOver.tsx';
import { DemonstrationStage } from './DemonstrationStage.tsx';

/** Lays the instructor's stage over the window. */
export function showStage(): void {
  layOver((close) => <DemonstrationStage close={close} />);
}
