/**
 * Gait speed against three published cuts.
 *
 * 0.8 m/s or less is low performance in the sarcopenia consensus; under 1.0 m/s went with later leg limitation
 * in well-functioning older people; 0.76 m/s parted fallers in one study. None was made for painful joints.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';

const cutsMPerS = { low: 0.8, limitation: 1, fallers: 0.76 } as const;

export const gaitSpeedRow = calculation({
  id: 'gait-speed',
  title: 'Gait speed',
  area: 'outcomes',
  input: [
    { name: 'distanceM', kind: 'number', unit: 'm', min: 2, max: 100 },
    { name: 'seconds', kind: 'number', unit: 's', min: 1, max: 600 },
  ],
  result: [
    { name: 'speedMPerS', unit: 'm/s' },
    { name: 'lowPerformance', unit: '', about: '0.8 m/s or less' },
    { name: 'underOne', unit: '', about: 'under 1.0 m/s' },
    { name: 'underFallersCut', unit: '', about: 'under 0.76 m/s' },
  ],
  citations: [
    { source: 'ewgsop2-2019', locator: '0.8 m/s', mark: 'seen' },
    {
      source: 'cesari-2005',
      locator: 'under 1.0 m/s: relative risk 2.20 (1.76 to 2.74) of leg limitation',
      mark: 'seen',
    },
    { source: 'gait-fallers', locator: '0.76 m/s', mark: 'seen' },
  ],
  calculate: (input) => {
    const speed = input.distanceM / input.seconds;
    return answer({
      speedMPerS: speed,
      lowPerformance: speed <= cutsMPerS.low,
      underOne: speed < cutsMPerS.limitation,
      underFallersCut: speed < cutsMPerS.fallers,
    });
  },
  example: { distanceM: 4, seconds: 5 },
});
