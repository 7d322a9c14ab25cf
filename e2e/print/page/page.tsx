import { render } from 'preact';
import '../../../src/ui/base.css';
import { LabelsScreen } from '../../../src/ui/labels/LabelsScreen.tsx';
import '../../../src/ui/tokens.css';
import { subjectsFor } from '../subjects.ts';

const root = document.getElementById('app');
if (!root) throw new Error('The page has no place for the screen.');

const asked = new URLSearchParams(location.search);
render(
  <LabelsScreen
    cardless={0}
    onMakeCards={() => undefined}
    unlabelledRooms={0}
    onLabelRooms={() => undefined}
    subjects={subjectsFor(Number(asked.get('count') ?? 70))}
    linkBase={asked.get('base') ?? 'https://labels.example/'}
    onPrinted={(codes, formatName) => {
      document.body.dataset['printed'] = `${codes.length} of ${formatName}`;
    }}
    back="#/"
  />,
  root,
);
