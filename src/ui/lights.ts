export const lights = ['dark', 'light', 'red'] as const;
export type Light = (typeof lights)[number];

const GROUND: Record<Light, string> = { dark: '#12100d', light: '#f3eee3', red: '#080000' };

/** Dark unless the keeper chose otherwise: a white screen blinds him and puts a hatchling off. */
export const chosenLight = (text: string | null | undefined): Light =>
  lights.find((each) => each === text) ?? 'dark';

export function applyLight(light: Light): void {
  // The page comes in the dark: saying so again would have its styles worked out twice.
  if (document.documentElement.dataset['light'] === light) return;
  document.documentElement.dataset['light'] = light;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', GROUND[light]);
}
