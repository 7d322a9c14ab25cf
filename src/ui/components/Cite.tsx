import { useEffect, useState } from 'preact/hooks';
import type { SourceId } from '../../domain/sources.ts';

/** Where something comes from. The bibliography is fetched when a reason is first opened. */
export function Cite({ source }: { readonly source: SourceId | undefined }) {
  const [cite, setCite] = useState<string>();
  useEffect(() => {
    let isOver = false;
    void import('../../domain/sources.ts').then(({ sources }) => {
      if (!isOver) setCite(source && sources[source].cite);
    });
    return () => {
      isOver = true;
    };
  }, [source]);
  return <p>{cite ?? '…'}</p>;
}
