import { SlabLink } from '../components/Slab.tsx';
import { useView } from '../model.ts';

/** On tonight’s list: how many males are to be moved, and the way there; nothing where none is. */
export function MovesTonight() {
  const view = useView('moveCounts', null);
  if (!view || view.ins + view.outs === 0) return null;
  const all = view.ins + view.outs;
  const parts = [
    ...(view.outs > 0 ? [`${view.outs} to take out`] : []),
    ...(view.ins > 0 ? [`${view.ins} to put in`] : []),
  ];
  return (
    <SlabLink icon="pair" href="#/moves" under={parts.join(', ')}>
      {all} {all === 1 ? 'move' : 'moves'} tonight
    </SlabLink>
  );
}
