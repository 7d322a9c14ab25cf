import { LabelsScreen } from '../labels/LabelsScreen.tsx';
import { useModel, useView } from '../model.ts';
import { linkBase } from '../route.ts';
import { Page } from './Page.tsx';

/** Labels of this collection, handed to the printing screen. */
export function LabelsHost() {
  const { desk, failWith } = useModel();
  const view = useView('labels', null);
  if (!view) return <Page title="Labels" back />;
  return (
    <LabelsScreen
      subjects={view.labelled}
      linkBase={linkBase()}
      back="#/shelf"
      cardless={view.cardless.length}
      onMakeCards={() => void desk.tell('giveCard', view.cardless).catch(failWith)}
      unlabelledRooms={view.unlabelledRooms.length}
      onLabelRooms={() => void desk.tell('giveCard', view.unlabelledRooms).catch(failWith)}
      unlabelledEggs={view.unlabelledEggs.length}
      onLabelEggs={() => void desk.tell('giveCard', view.unlabelledEggs).catch(failWith)}
      onPrinted={(codes, format) =>
        void desk
          .tell('record', { drafts: [{ type: 'label-printed', codes: [...codes], format }] })
          .catch(failWith)
      }
    />
  );
}
