import { useState } from 'preact/hooks';
import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import type { FormProps } from './form-props.ts';

const qualities = [
  { quality: 'whole', words: 'Whole', under: undefined },
  { quality: 'pieces', words: 'In pieces', under: undefined },
  { quality: 'caps left', words: 'Eye caps left', under: 'Leave them. Next shed, then a vet.' },
  { quality: 'tail tip left', words: 'Tail tip left', under: undefined },
] as const;

/** How it shed; and where it may have been the pre-lay shed, one question, answered beforehand. */
export function ShedForm({ view, occupant, night, put, onClose }: FormProps) {
  const { id: animal, name, sex, season } = occupant;
  const context = season?.preLay[night ?? view.night];
  const [isPreLay, setIsPreLay] = useState(context !== undefined);
  // Where nothing speaks for it, nobody is asked: then only a yes is written.
  const preLay = context === undefined && !isPreLay ? {} : { preLay: isPreLay };
  const words = isPreLay ? ', pre-lay' : '';
  return (
    <Sheet title={`${name} shed`} onClose={onClose}>
      {context !== undefined && (
        <div class="stack" role="group" aria-label="Was this the pre-lay shed?">
          <p>
            <strong>Was this the pre-lay shed?</strong> {context}
          </p>
          <div class="two">
            <Slab pressed={isPreLay} onPress={() => setIsPreLay(true)}>
              Yes, pre-lay
            </Slab>
            <Slab pressed={!isPreLay} onPress={() => setIsPreLay(false)}>
              No, an ordinary shed
            </Slab>
          </div>
        </div>
      )}
      {context === undefined && sex === 'female' && (
        <div class="chips">
          <button
            type="button"
            class="pill"
            aria-pressed={isPreLay}
            onClick={() => setIsPreLay(!isPreLay)}
          >
            It is the pre-lay shed
          </button>
        </div>
      )}
      <div class="two">
        {qualities.map(({ quality, words: how, under }) => (
          <Slab
            key={quality}
            icon="shed"
            kind={quality === 'whole' ? 'main' : undefined}
            under={quality === 'whole' && isPreLay ? 'the pre-lay shed' : under}
            onPress={() =>
              put({ type: 'shed', animal, quality, ...preLay }, `shed ${quality}${words}`)
            }
          >
            {how}
          </Slab>
        ))}
      </div>
    </Sheet>
  );
}
