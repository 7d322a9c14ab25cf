import { Page } from '../screens/Page.tsx';
import { BoardPage } from './BoardPage.tsx';
import { MalesPage } from './MalesPage.tsx';
import { PlanPage } from './PlanPage.tsx';
import './rotation.css';

const pages = [
  ['board', 'Board'],
  ['plan', 'Plan'],
  ['males', 'Males'],
] as const;

/** Sharing the males: who is wanted for whom, the plan of it, and how the males bear it. */
export function RotationScreen({ page }: { readonly page: string }) {
  const shown = pages.find(([id]) => id === page)?.[0] ?? 'board';
  return (
    <Page title="Males" back>
      <nav class="chips" aria-label="Parts">
        {pages.map(([id, word]) => (
          <a
            key={id}
            class="pill"
            href={`#/rotation/${id}`}
            aria-current={id === shown ? 'page' : undefined}
          >
            {word}
          </a>
        ))}
        <a class="pill" href="#/moves">
          Tonight’s moves
        </a>
      </nav>
      {shown === 'board' && <BoardPage />}
      {shown === 'plan' && <PlanPage />}
      {shown === 'males' && <MalesPage />}
    </Page>
  );
}
