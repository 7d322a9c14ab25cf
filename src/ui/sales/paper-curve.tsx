import { dateWords } from '../../domain/core/day-words.ts';
import type { SizeMm } from '../../domain/labels/format.ts';
import type { PapersView } from '../../domain/views/papers-view.ts';
import { showMass } from '../mass-unit.ts';
import { MARGIN, paragraph, type Block } from './paper-flow.tsx';

const HEIGHT = 34;
const FIRST_X = 18;

/** The weights of a life as one line, with its ends, its lowest and its highest named. Unit: mm. */
export function weightCurve(masses: PapersView['masses'], size: SizeMm): Block {
  const [first, last] = [masses[0], masses.at(-1)];
  if (!first || !last) return paragraph('No weight is on record.', size);
  if (masses.length === 1) {
    return paragraph(`${showMass(first.massG)} on ${dateWords(first.night)}.`, size);
  }
  const left = MARGIN + FIRST_X;
  const width = size.width - MARGIN - left - 2;
  const [low, high] = [
    Math.min(...masses.map(({ massG }) => massG)),
    Math.max(...masses.map(({ massG }) => massG)),
  ];
  const spanMs = Math.max(1, last.ms - first.ms);
  const x = (ms: number) => left + ((ms - first.ms) / spanMs) * width;
  const y = (massG: number) => 26 - ((massG - low) / Math.max(1, high - low)) * 22;
  const path = masses
    .map(({ ms, massG }, i) => `${i === 0 ? 'M' : 'L'}${x(ms).toFixed(2)} ${y(massG).toFixed(2)}`)
    .join('');
  return {
    height: HEIGHT,
    draw: () => (
      <>
        <path d={`M${left} 2V28H${left + width}`} fill="none" stroke="#000" stroke-width={0.2} />
        <path d={path} fill="none" stroke="#000" stroke-width={0.45} />
        {masses.map(({ ms, massG }) => (
          <circle key={ms} cx={x(ms)} cy={y(massG)} r={0.6} />
        ))}
        {[...new Set([low, high])].map((massG) => (
          <text key={massG} x={left - 1.5} y={y(massG) + 1} font-size={2.9} text-anchor="end">
            {showMass(massG)}
          </text>
        ))}
        <text x={left} y={32} font-size={2.9}>
          {dateWords(first.night)}
        </text>
        <text x={left + width} y={32} font-size={2.9} text-anchor="end">
          {dateWords(last.night)}: {showMass(last.massG)}
        </text>
      </>
    ),
  };
}
