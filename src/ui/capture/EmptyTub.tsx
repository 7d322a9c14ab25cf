import { SlabLink } from '../components/Slab.tsx';
import type { CaptureView } from '../../domain/views/capture-view.ts';
import { Notices } from '../screens/Notices.tsx';

/** Nobody in: a male on a visit, or a tub that is free. */
export const EmptyTub = ({ view }: { readonly view: CaptureView }) => (
  <div class="capture-facts stack">
    {view.away ? (
      <>
        <p>
          {view.away.name} is on a visit with {view.away.with} in {view.away.position}. This tub is
          not fed.
        </p>
        <SlabLink icon="away" href={`#/snake/${view.away.id}`}>
          Go to {view.away.name}
        </SlabLink>
      </>
    ) : (
      <>
        <p>No snake lives in this tub yet.</p>
        <SlabLink icon="add" href={`#/add/${view.position ?? ''}`}>
          Add a snake here
        </SlabLink>
        <SlabLink icon="find" href="#/find">
          Find one to move here
        </SlabLink>
      </>
    )}
    <Notices />
  </div>
);
