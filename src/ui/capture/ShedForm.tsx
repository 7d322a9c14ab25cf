import { Sheet } from '../components/Sheet.tsx';
import { Slab } from '../components/Slab.tsx';
import type { FormProps } from './form-props.ts';

const qualities = [
  { quality: 'whole', words: 'Whole', under: undefined },
  { quality: 'pieces', words: 'In pieces', under: undefined },
  { quality: 'caps left', words: 'Eye caps left', under: 'Leave them. Next shed, then a vet.' },
  { quality: 'tail tip left', words: 'Tail tip left', under: undefined },
] as const;

export const ShedForm = ({ occupant, put, onClose }: FormProps) => (
  <Sheet title={`${occupant.name} shed`} onClose={onClose}>
    <div class="two">
      {qualities.map(({ quality, words, under }) => (
        <Slab
          key={quality}
          icon="shed"
          kind={quality === 'whole' ? 'main' : undefined}
          under={under}
          onPress={() => put({ type: 'shed', animal: occupant.id, quality }, `shed ${quality}`)}
        >
          {words}
        </Slab>
      ))}
    </div>
  </Sheet>
);
