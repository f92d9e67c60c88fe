/** The place where a notebook begins to tell of a certain boat: a key that brings her. */
import { boatsToBring } from '../text/front-matter';
import { fencedKind } from '../text/block-kind';

export const boat = fencedKind('boat', ({ info, text, raw }, { line, fault }) => {
  if (!boatsToBring.includes(info))
    return [
      fault(`A boat to be brought is one of ${boatsToBring.join(', ')}; "${info}" is none of them.`, raw),
    ];
  if (text.trim() !== '') return [fault('A block that brings a boat has no lines in it.', raw)];
  return [{ type: 'boat', boat: info, line }];
});
