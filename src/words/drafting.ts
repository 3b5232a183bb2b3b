import type { ProblemCatalogue } from './catalogue.ts';

export const draftingProblems: ProblemCatalogue = {
  'drafting.no-measure': {
    message: 'Nothing can be drafted without the {measure}.',
    remedy: 'Measure it and enter it; what else is missing is estimated.',
  },
  'drafting.no-such-view': {
    message: '{pattern} has no view “{view}”.',
    remedy: 'Choose one of these: {views}.',
  },
  'drafting.cap-cannot-fit': {
    message: 'No sleeve cap fits: the armhole measures {armhole} round and the sleeve {sleeve} across.',
    remedy: 'Look at upper arm, armhole depth and across back again; one of them does not go with the others.',
  },
  'drafting.arm-too-short': {
    message: 'An arm of {arm} leaves no room for a long sleeve below its cap.',
    remedy: 'Measure the arm again, from shoulder point over the bent elbow to the wrist.',
  },
  'drafting.bodice-cannot-fit': {
    message: 'No side seam makes a bust of {bust} with the other measures given.',
    remedy: 'Look at bust, waist and front waist length again; one of them does not go with the others.',
  },
  'drafting.levels-too-close': {
    message: 'Underarm, waist and hip lie too close: the waist is {waist} below the nape, the armhole {armhole} deep.',
    remedy: 'Measure back waist length, armhole depth and waist to hip again.',
  },
  'drafting.bust-points-too-far-apart': {
    message: 'With the bust points {span} apart there is no room for a side dart.',
    remedy: 'Measure the bust span again, point to point, straight across.',
  },
  'drafting.skirt-levels': {
    message: 'Waist, hip and hem lie too close for a skirt: hip {hip} and hem {hem} below the waist.',
    remedy: 'Measure waist to hip, and the heights of waist and knee from the floor, again.',
  },
  'drafting.waist-too-near-hip': {
    message: 'A waist of {waist} on a hip of {hip}, both with their ease, leaves nothing for darts to shape.',
    remedy: 'Ask for more ease at the hip or less at the waist, or measure both again.',
  },
  'drafting.raglan-cannot-fit': {
    message: 'A raglan sleeve {sleeve} across does not go with an armhole {depth} deep.',
    remedy: 'Look at upper arm, arm length and armhole depth again; one of them does not go with the others.',
  },
  'drafting.measures-contradict': {
    message: 'These measures do not make one body: the pieces drafted from them would not sew together.',
    remedy: 'Look at the measures that are queried as unlikely, and take those again.',
  },
  'drafting.hood-cannot-fit': {
    message: 'No hood fits a neckline of {neck} with these measures of the head.',
    remedy: 'Measure head girth, base of the neck and nape height again; one of them does not go with the others.',
  },
  'drafting.head-cannot-pass': {
    message:
      'A neckline of {neckline}, which the head needs to pass its band, is more than this neck and shoulder have room for.',
    remedy: 'Measure head, base of the neck and shoulder length again.',
  },
  'drafting.legs-cannot-walk': {
    message: 'Front and back leg cannot be drawn to one length with these measures.',
    remedy: 'Look at hip, thigh, knee and inside leg again; one of them does not go with the others.',
  },
  'drafting.waist-cannot-be-had': {
    message: 'A waist of {waist} cannot be had over these hips by shaping the front and gathering the back.',
    remedy: 'Measure waist and hip again, or ask for another ease at the waist.',
  },
  'drafting.no-such-level': {
    message: 'This pattern has no ease at “{level}”.',
    remedy: 'Give ease at one of these: {levels}.',
  },
  'drafting.ease-impossible': {
    message: 'Ease of {ease} at {level} is not possible here: from {low} to {high}.',
    remedy: 'Choose an ease between the two.',
  },
};

export const draftingWords = {} as const;
