import { layOver } from '../frame/layOver.tsx';
import { SetUpsStage } from './SetUpsStage.tsx';

/** Lays the gun set-ups over the window. */
export function showSetUps(): void {
  layOver((close) => <SetUpsStage close={close} />);
}
