import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useModel } from './model.ts';

/**
 * A screen that is fetched when first shown, so that the capture screen need not wait for it. The
 * service worker has it on the device from the first visit, so this works without a network.
 */
export function lazy<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  let loaded: ComponentType<Props> | undefined;
  return function Lazy(props: Props) {
    const { failWith } = useModel();
    const [Screen, setScreen] = useState(() => loaded);
    useEffect(() => {
      if (Screen) return;
      void load().then((screen) => {
        loaded = screen;
        setScreen(() => screen);
      }, failWith);
    }, []);
    return Screen ? <Screen {...props} /> : <main class="page" aria-busy="true" />;
  };
}
