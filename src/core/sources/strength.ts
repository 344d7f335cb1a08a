/**
 * Bibliography of the strength rules. How far each was read stands with every citation, not here:
 * most were met as an abstract or restated by somebody else.
 */
import type { Source } from './source.ts';

export const strengthSources = {
  'epley-1985': { authors: 'Epley B', year: 1985, title: 'Poundage chart', kind: 'handbook' },
  'brzycki-1993': {
    authors: 'Brzycki M',
    year: 1993,
    title: 'Strength testing: predicting a one-rep max from reps-to-fatigue',
    kind: 'study',
  },
  'lombardi-1989': {
    authors: 'Lombardi VP',
    year: 1989,
    title: 'Beginning weight training',
    kind: 'handbook',
  },
  'mayhew-1992': {
    authors: 'Mayhew JL et al.',
    year: 1992,
    title:
      'Relative muscular endurance performance as a predictor of bench press strength in college men and women',
    kind: 'study',
  },
  'oconner-1989': {
    authors: "O'Conner B, Simmons J, O'Shea P",
    year: 1989,
    title: 'Weight training today',
    kind: 'handbook',
  },
  'wathan-1994': {
    authors: 'Wathen D (also printed Wathan)',
    year: 1994,
    title: 'Load assignment',
    kind: 'handbook',
  },
  'lander-1985': { authors: 'Lander J', year: 1985, title: 'Maximums based on reps', kind: 'study' },
  'kemmler-2006': {
    authors: 'Kemmler W, Lauber D, Wassermann A, Mayhew JL',
    year: 2006,
    title: 'Predicting maximal strength in trained postmenopausal woman',
    container: 'J Strength Cond Res 20(4):838–842',
    kind: 'study',
  },
  'older-trained-2024': {
    authors: 'Sports 2024;12(9):233',
    year: 2024,
    title: 'Repetition cubics per exercise in trained older adults with low bone mass',
    container: 'Sports 12(9):233',
    identifier: '10.3390/sports12090233',
    kind: 'study',
  },
  'reynolds-2006': {
    authors: 'Reynolds JM, Gordon TJ, Robergs RA',
    year: 2006,
    title:
      'Prediction of one repetition maximum strength from multiple repetition maximum testing and anthropometry',
    container: 'J Strength Cond Res 20(3):584–592',
    kind: 'study',
  },
  'lacio-bench-press': {
    authors: 'Lacio et al.',
    year: null,
    title: 'Accuracy of six prediction equations in the bench press (31 young men)',
    container: 'Motricidade, article 143',
    kind: 'study',
  },
  'knutzen-1999': {
    authors: 'Knutzen KM, Brilla LR, Caine D',
    year: 1999,
    title: 'Validity of 1RM prediction equations for older adults',
    container: 'J Strength Cond Res 13(3):242–246',
    kind: 'study',
  },
  'hutchins-2010': {
    authors: 'Hutchins MD, Gearhart RF',
    year: 2010,
    title: 'Accuracy of 1-RM prediction equations for the bench press and biceps curl',
    kind: 'study',
  },
  'mayhew-2008': {
    authors: 'Mayhew JL et al.',
    year: 2008,
    title:
      'Accuracy of prediction equations for determining one repetition maximum bench press in women before and after resistance training',
    container: 'J Strength Cond Res 22(5):1570–1577',
    kind: 'study',
  },
  'nsca-load-chart': {
    authors: 'National Strength and Conditioning Association',
    year: null,
    title: 'Training load chart',
    kind: 'handbook',
  },
  'nsca-textbook': {
    authors: 'National Strength and Conditioning Association',
    year: null,
    title: 'Percent of the 1RM and repetitions allowed, textbook edition',
    kind: 'handbook',
  },
  'nuzzo-2024': {
    authors: 'Nuzzo JL, Pinto MD, Nosaka K, Steele J',
    year: 2024,
    title:
      'Maximal number of repetitions at percentages of the one repetition maximum: a meta-regression and moderator analysis',
    container: 'Sports Med 54:303–321',
    identifier: '10.1007/s40279-023-01937-7',
    kind: 'review',
  },
  'mitchell-2012': {
    authors: 'Mitchell CJ et al.',
    year: 2012,
    title: 'Resistance exercise load does not determine training-mediated hypertrophic gains in young men',
    container: 'J Appl Physiol 113:71–77',
    identifier: '10.1152/japplphysiol.00307.2012',
    kind: 'trial',
  },
  'morton-2016': {
    authors: 'Morton RW et al.',
    year: 2016,
    title:
      'Neither load nor systemic hormones determine resistance training-mediated hypertrophy or strength gains in resistance-trained young men',
    container: 'J Appl Physiol 121:129–138',
    identifier: '10.1152/japplphysiol.00154.2016',
    kind: 'trial',
  },
  'schoenfeld-2017-load': {
    authors: 'Schoenfeld BJ, Grgic J, Ogborn D, Krieger JW',
    year: 2017,
    title: 'Strength and hypertrophy adaptations between low- vs. high-load resistance training',
    container: 'J Strength Cond Res 31:3508–3523',
    identifier: '10.1519/JSC.0000000000002200',
    kind: 'review',
  },
  'lasevicius-2018': {
    authors: 'Lasevicius T et al.',
    year: 2018,
    title:
      'Effects of different intensities of resistance training with equated volume load on muscle strength and hypertrophy',
    container: 'Eur J Sport Sci 18:772–780',
    identifier: '10.1080/17461391.2018.1450898',
    kind: 'trial',
  },
  'older-leg-press-2017': {
    authors: 'Manual Therapy, Posturology & Rehabilitation Journal 2017;15:447',
    year: 2017,
    title: 'Repetitions to failure at 30 and 80 % 1RM in young and older men, 45° leg press',
    identifier: '10.17784/mtprehabjournal.2017.15.447',
    kind: 'study',
  },
  'refalo-2023': {
    authors: 'Refalo MC et al.',
    year: 2023,
    title:
      'Influence of resistance training proximity-to-failure on skeletal muscle hypertrophy: a systematic review with meta-analysis',
    container: 'Sports Med',
    identifier: '10.1007/s40279-022-01784-y',
    kind: 'review',
  },
  'robinson-2024': {
    authors: 'Robinson ZP et al.',
    year: 2024,
    title:
      'Dose-response of estimated proximity to failure, strength gain and muscle hypertrophy: meta-regressions',
    container: 'Sports Med 54',
    identifier: '10.1007/s40279-024-02069-2',
    kind: 'review',
  },
  'halperin-2022': {
    authors: 'Halperin I et al.',
    year: 2022,
    title: 'Accuracy in predicting repetitions to task failure in resistance exercise',
    container: 'Sports Med 52:377–390',
    identifier: '10.1007/s40279-021-01559-x',
    kind: 'review',
  },
  'hackett-2017': {
    authors: 'Hackett DA et al.',
    year: 2017,
    title: 'Accuracy in estimating repetitions to failure during resistance exercise',
    container: 'J Strength Cond Res 31:2162–2168',
    kind: 'study',
  },
  'zourdos-2016': {
    authors: 'Zourdos MC et al.',
    year: 2016,
    title: 'Resistance-training rating of perceived exertion measuring repetitions in reserve',
    identifier: '10.1519/JSC.0000000000001049',
    kind: 'study',
  },
  'schoenfeld-2017-volume': {
    authors: 'Schoenfeld BJ, Ogborn D, Krieger JW',
    year: 2017,
    title:
      'Dose-response relationship between weekly resistance training volume and increases in muscle mass',
    container: 'J Sports Sci 35:1073–1082',
    identifier: '10.1080/02640414.2016.1210197',
    kind: 'review',
  },
  'pelland-2024': {
    authors: 'Pelland JC et al.',
    year: 2024,
    title: 'Resistance training dose-response: meta-regressions on weekly volume and frequency (preprint)',
    kind: 'review',
  },
  'singer-2024': {
    authors: 'Singer A et al.',
    year: 2024,
    title: 'Effect of inter-set rest interval duration on muscle hypertrophy: Bayesian meta-analysis',
    identifier: '10.3389/fspor.2024.1429789',
    kind: 'review',
  },
  'acsm-2009': {
    authors: 'American College of Sports Medicine (Ratamess NA et al.)',
    year: 2009,
    title: 'Progression models in resistance training for healthy adults',
    kind: 'guideline',
  },
  'baechle-earle': {
    authors: 'Baechle TR, Earle RW',
    year: null,
    title: 'Essentials of strength training and conditioning: two-for-two rule',
    kind: 'handbook',
  },
  'foster-1998': {
    authors: 'Foster C',
    year: 1998,
    title: 'Monitoring training in athletes with reference to overtraining syndrome',
    container: 'Med Sci Sports Exerc 30:1164–1168',
    kind: 'study',
  },
  'foster-2001': {
    authors: 'Foster C et al.',
    year: 2001,
    title: 'A new approach to monitoring exercise training',
    container: 'J Strength Cond Res 15:109–115',
    kind: 'study',
  },
  'foster-2021': {
    authors: 'Foster C et al.',
    year: 2021,
    title: 'Session rating of perceived exertion: historical perspective and development',
    identifier: '10.1123/ijspp.2020-0599',
    kind: 'review',
  },
  'military-health-table': {
    authors: 'BMJ Military Health, article 158463',
    year: null,
    title: 'Table 1: training-load formulas with worked examples',
    kind: 'review',
  },
  'ucum-2.2': {
    authors: 'Regenstrief Institute',
    year: 2024,
    title: 'The Unified Code for Units of Measure, version 2.2',
    kind: 'standard',
  },
} satisfies Record<string, Source>;
