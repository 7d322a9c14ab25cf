import type { ComponentChildren, ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useModel } from './model.ts';

/**
 * A screen that is fetched when first shown, so that the capture screen need not wait for it. The
 * service worker has it on the device from the first visit, so this works without a network.
 * `meanwhile` stands in its place until then.
 */
export function lazy<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  meanwhile: ComponentChildren = <main class="page" aria-busy="true" />,
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
    return Screen ? <Screen {...props} /> : <>{meanwhile}</>;
  };
}
