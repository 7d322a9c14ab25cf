import { signal } from '@preact/signals';
import { followRemembered, remember, remembered } from './remember.ts';

export const lights = ['dark', 'light', 'red'] as const;
export type Light = (typeof lights)[number];

const GROUND: Record<Light, string> = { dark: '#12100d', light: '#f3eee3', red: '#080000' };

/** Dark unless the keeper chose otherwise: a white screen blinds him and puts a hatchling off. */
const chosen = (text: string | null | undefined): Light =>
  lights.find((each) => each === text) ?? 'dark';

export const light = signal<Light>(chosen(remembered('light')));

export function setLight(next: Light): void {
  light.value = next;
  remember('light', next);
  applyLight();
}

/** Every tab of a browser is in one room. */
export function followLight(): void {
  followRemembered('light', (text) => {
    light.value = chosen(text);
    applyLight();
  });
}

export function applyLight(): void {
  document.documentElement.dataset['light'] = light.value;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[light.value]);
}
