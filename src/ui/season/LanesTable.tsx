import type { Lane } from '../../domain/views/lanes-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';
import { markWords } from './lane-words.ts';

/** All that the strip shows, in words. */
export const LanesTable = ({ lanes }: { readonly lanes: readonly Lane[] }) => (
  <Unfolds summary="The same as a table">
    {() => (
      <div class="strip-table">
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">Female</th>
              <th scope="col">Coming</th>
              <th scope="col">Happened</th>
            </tr>
          </thead>
          <tbody>
            {lanes.map((lane) => (
              <tr key={lane.id}>
                <th scope="row">
                  <a href={`#/animal/${lane.id}`}>{lane.name}</a>, {lane.position}
                  <br />
                  <span class="quiet small">{lane.stage}</span>
                </th>
                <td class="small">
                  {lane.windows.map(({ event, says, isOverdue }) => (
                    <p key={event}>
                      {says}
                      {isOverdue && ' Overdue.'}
                    </p>
                  ))}
                </td>
                <td class="small">{lane.marks.map(markWords).join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    )}
  </Unfolds>
);
