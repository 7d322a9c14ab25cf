import { Slab } from '../components/Slab.tsx';
import { useModel } from '../model.ts';
import { go } from '../route.ts';
import { remember } from '../remember.ts';
import { useState } from 'preact/hooks';

/** The first start: three ways in. */
export function StartScreen({ onBegun }: { readonly onBegun: () => void }) {
  const model = useModel();
  const [isBusy, setIsBusy] = useState(false);
  const begun = () => {
    remember('begun', 'yes');
    onBegun();
  };
  const begin = (to: string) => {
    begun();
    go(to);
  };
  const demo = async () => {
    setIsBusy(true);
    // Its first screen stands before all of it is there, and leads on: nobody is called back then.
    go('/tonight');
    try {
      await model.open('demo');
      begun();
    } catch (error) {
      model.failWith(error);
      setIsBusy(false);
    }
  };
  return (
    <main class="page start">
      <svg class="start-drop" viewBox="0 0 320 90" aria-hidden="true">
        <path d="M0 18h96v26h96v26h128" />
        <path class="start-drop-dots" d="M0 78h320" />
      </svg>
      <h1>Nightdrop</h1>
      <p>
        Scan a tub, tap once, know what to do tonight. Your records stay on this device and work
        without a network.
      </p>
      <div class="stack">
        <Slab
          icon="racks"
          kind="main"
          under="draw your first rack"
          onPress={() => begin('/new-rack')}
        >
          Begin my collection
        </Slab>
        <Slab icon="safe" under="from another phone" onPress={() => begin('/safe')}>
          Take in a backup
        </Slab>
        <Slab
          icon="tonight"
          under="invented snakes, erased in one tap"
          disabled={isBusy}
          onPress={() => void demo()}
        >
          {isBusy ? 'Opening…' : 'Look round the demo'}
        </Slab>
      </div>
    </main>
  );
}
