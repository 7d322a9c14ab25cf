import { parentsIn } from './ancestry.ts';
import type { Evidence } from './evidence.ts';
import type { Pedigree } from './pedigree.ts';

/**
 * The evidence that an animal's birth prior rests on ("66 %"): without what was learnt from its own
 * young and theirs, and without tests of itself. Its own look and all of its relatives' stay.
 */
export function evidenceAtHatching(
  { members, clutches, indexOf }: Pedigree,
  evidence: Evidence,
  animal: string,
): Evidence {
  const line = new Set([indexOf.get(animal)]);
  const bred = new Set<string>();
  members.forEach(({ clutch }, index) => {
    const brood = clutch === undefined ? undefined : clutches[clutch];
    if (brood && parentsIn(brood).some((parent) => line.has(parent))) line.add(index);
  });
  for (const brood of clutches) {
    if (parentsIn(brood).some((parent) => line.has(parent))) bred.add(brood.id);
  }
  const findings = evidence.findings.filter((finding) => {
    if (finding.kind === 'young') return !bred.has(finding.clutch);
    if (finding.animal === animal) return finding.kind === 'look';
    return !line.has(indexOf.get(finding.animal));
  });
  return { ...evidence, findings };
}
