import { signal } from '@preact/signals';
import { remember, remembered } from './remember.ts';

export const lights = ['dark', 'light', 'red'] as const;
export type Light = (typeof lights)[number];

const GROUND: Record<Light, string> = { dark: '#12100d', light: '#f3eee3', red: '#080000' };

const first = remembered('light');

/** Dark unless the keeper chose otherwise: a white screen blinds him and puts a hatchling off. */
export const light = signal<Light>(first === 'light' || first === 'red' ? first : 'dark');

export function setLight(next: Light): void {
  light.value = next;
  remember('light', next);
  applyLight();
}

export function applyLight(): void {
  document.documentElement.dataset['light'] = light.value;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[light.value]);
}
