/** An appointment by video or telephone, joint by joint. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'This appointment, joint by joint',
  'signs-first': 'First ask the warning signs.',
  'signs-link': 'Warning signs',
  'no-joint': 'No joint is followed yet; name one under Care, Episode.',
  camera: 'Camera: {text}.',
  locked: 'left out. {reason} It is kept as not done.',
  keep: 'Keep what was found: {joint-name}',
  kept: 'Kept.',
  'joint-kept': '{joint-name}: kept, open it to put it right',
  missing: 'Not judged at a distance, whatever was seen: {list}. Do it when you meet in person.',
  found: 'Found at a distance',
  when: 'When',
  'joint-head': 'Joint',
  part: 'Part',
  how: 'How',
  what: 'Found',
  'none-found': 'Nothing was found at a distance.',
  nothing: 'no reason given',
  before: 'before: {text}',
  'by-look': 'Look',
  'by-press': 'Press',
  'by-move': 'Move',
  'by-task': 'Task',
} as const;

export const say = sayIn(words);
