/** Which of the keys a file was ever sealed with seals the rows of one chain, as it is walked from its beginning. */
import { fingerprintOf } from '../database/key-fingerprints.ts';
import { type AuditKeys, type AuditRow, handOver, keysIn, sealOf } from './seal.ts';

export interface SealingKey {
  /** Whether a row is sealed by the key whose turn it is; after the row that hands over it is the next one's. */
  readonly seals: (row: AuditRow) => boolean;
  /** Rows before the next one are not at hand: a later key may seal it already. */
  readonly skip: () => void;
  readonly isLast: () => boolean;
}

export const sealingKey = (all: AuditKeys): SealingKey => {
  const keys = keysIn(all);
  let turn = 0;
  // A chain that was begun later has nothing to hand over.
  let mayBeLater = true;
  return {
    seals: ({ seal, ...row }) => {
      const last = mayBeLater ? keys.length - 1 : turn;
      mayBeLater = false;
      for (let place = turn; place <= last; place += 1) {
        if (sealOf(keys[place]!, row) !== seal) continue;
        const next = keys[place + 1];
        const isHandOver = row.subject === handOver && next && row.subjectId === fingerprintOf('audit', next);
        turn = isHandOver ? place + 1 : place;
        return true;
      }
      return false;
    },
    skip: () => {
      mayBeLater = true;
    },
    isLast: () => turn === keys.length - 1,
  };
};
