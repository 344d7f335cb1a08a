/** Measurements: recording one, and all of them in words. */
import { sayIn } from '../../say.ts';

export const words = {
  'effusion.record': 'Record effusion',
  'taken-twice': 'At least one minute after the first. The lower reading is used.',
  'last-of': 'Last {value} on {date}, {subject}. {min} to {max}',
  last: 'Last {value} on {date}. {min} to {max}',
  'record-kind': 'Record {kind}',
  'pulse-oximeter': 'pulse oximeter',
  kilograms: '{number} kg',
  centimetres: '{number} cm',
  'blood-pressure': '{systolic}/{diastolic} mmHg, {position}',
  circumference: '{number} cm, {site}',
  'occlusion-pressure': '{first} and {second} mmHg; cuff {width} cm, {position}, {method}',
  'ankle-brachial': 'ankle {dorsal} and {tibial} mmHg, arm {arm} mmHg',
  repetitions: '{count} repetitions with {load} kg',
  stands: '{count} stands',
  'joint-counts': 'tender {tender}, swollen {swollen} of 28; globals {patient} and {clinician}',
  activity: '{score} of 10',
  'both-sides': 'both sides',
  'not-measured': 'not measured',
  'out-of-date': '{value} ({date}, out of date: measure again)',
  record: 'Record a measurement',
  effusion: 'Knee effusion',
  all: 'All measurements, newest first',
  unusual: '{value} (unusual, confirmed)',
  none: 'No measurement is recorded yet.',
} as const;

export const say = sayIn(words);
