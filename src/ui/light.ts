import { signal } from '@preact/signals';
import { applyLight, chosenLight, type Light } from './lights.ts';
import { followRemembered, remember, remembered } from './remember.ts';

export const light = signal<Light>(chosenLight(remembered('light')));

export function setLight(next: Light): void {
  light.value = next;
  remember('light', next);
  applyLight(next);
}

/** Every tab of a browser is in one room. */
export function followLight(): void {
  followRemembered('light', (text) => {
    light.value = chosenLight(text);
    applyLight(light.value);
  });
}
