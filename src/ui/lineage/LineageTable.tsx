import type { LineageRow } from '../../domain/views/lineage-view.ts';
import { Unfolds } from '../components/Unfolds.tsx';

/** All that the cords show, in words. */
export const LineageTable = ({ rows }: { readonly rows: readonly LineageRow[] }) =>
  rows.length === 0 ? null : (
    <Unfolds summary="The same as a table">
      {() => (
        <div class="lineage-table">
          <table class="numbers">
            <thead>
              <tr>
                <th scope="col">Ancestor</th>
                <th scope="col">Name</th>
                <th scope="col">How sure</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.path}>
                  <th scope="row" class="small">
                    {row.relation}
                  </th>
                  <td>
                    {row.who?.isOnRecord ? (
                      <a href={`#/lineage/${row.who.id}`}>{row.who.name}</a>
                    ) : (
                      (row.who?.name ?? 'not known')
                    )}
                    {row.again && ', again'}
                  </td>
                  <td class="small">{howSure(row)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </Unfolds>
  );

const howSure = ({ who, sure, doubt }: LineageRow): string =>
  who === undefined
    ? ''
    : doubt === undefined
      ? 'as stated'
      : `${Math.round(sure * 100)} %, ${doubt}`;
