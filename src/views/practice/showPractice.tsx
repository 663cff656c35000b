import { layOver } from '../frame/layOver.tsx';
import { PracticeStage } from './PracticeStage.tsx';

/** Lays practice over the window. */
export function showPractice(): void {
  layOver((close) => <PracticeStage close={close} />);
}
