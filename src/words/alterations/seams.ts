import type { FamilyWords, SayNamed } from './family.ts';

const seamOf = (params: Readonly<Record<string, unknown>>, name: SayNamed): string =>
  typeof params['seam'] === 'string' ? `“${name('seam', params['seam'])}”` : '';

const amount = (params: Readonly<Record<string, unknown>>): number => Number(params['amount'] ?? 0);

const sewnAs: Readonly<Record<string, string>> = {
  plain: 'sewn plain',
  eased: 'eased',
  gathered: 'gathered',
  stretched: 'stretched',
};

export const seamsWords: FamilyWords = {
  alterations: {
    'true-seam': {
      name: 'True a seam at one end',
      about:
        'Carries the edge of one side, or of both, straight on at one end of a seam or cuts it back there, and redraws the line that crosses it. With no amount it goes on until the seam meets.',
      caution: 'The line that crosses the end changes its length a little: walk that seam too.',
      source: 'How joined pattern pieces are walked and trued on paper.',
      parameters: { amount: 'By how much; nothing: until it meets' },
      sentence: ({ params }, say, name) => {
        const by = amount(params);
        const end = params['end'] === 'start' ? 'where the walk starts' : 'where the walk ends';
        const seam = seamOf(params, name);
        if (by === 0) return `true the seam ${seam} ${end} until it meets`;
        return `true the seam ${seam} ${end}, ${say(Math.abs(by))} ${by < 0 ? 'shorter' : 'longer'}`;
      },
      more: 'Longer',
      less: 'Shorter',
    },
    'sew-seam': {
      name: 'Sew a seam another way',
      about:
        'Says how what one side of a seam has more is taken in: eased, gathered or, the shorter side, stretched; or that the seam is plain and both are equally long. No line is moved.',
      caution: 'Sew a sample in the very cloth first: how much can be eased or stretched is the cloth’s to say.',
      source:
        'The trade’s habit: up to 4 % eases into a woven seam without puckers and up to 3 % stretches without ripples; gathers take from a fifth more to three times the length.',
      parameters: { amount: 'Most that is taken in' },
      sentence: ({ params }, say, name) =>
        `the seam ${seamOf(params, name)} ${sewnAs[String(params['how'] ?? 'eased')] ?? ''}${
          params['how'] === 'plain' ? '' : `, up to ${say(amount(params))}`
        }`,
    },
    'move-notch': {
      name: 'Move a notch',
      about:
        'Marks a notch further along its edge or further back, alone or with those that meet it. Alone it mends a notch that misses its mate.',
      source: 'How notches are marked at the table: the seam is walked, and the mark made where its mate lies.',
      parameters: { amount: 'Along the edge' },
      sentence: ({ params }, say, name) =>
        `${name('notch', String(params['notch'] ?? ''))} moved ${say(Math.abs(amount(params)))} ${
          amount(params) < 0 ? 'back' : 'on'
        } along its edge${params['with'] === 'alone' ? '' : ', its mate with it'}`,
      more: 'Further on',
      less: 'Further back',
    },
  },
  parameters: {
    seam: 'Seam',
    end: 'At which end',
    which: 'Which side',
    how: 'How it is sewn',
    notch: 'Notch',
    with: 'Its mate',
  },
  choices: {
    start: 'Where the walk starts',
    end: 'Where the walk ends',
    a: 'The first side named',
    b: 'The second side named',
    plain: 'Plain, equally long',
    eased: 'Eased',
    gathered: 'Gathered',
    stretched: 'Stretched',
    'with-mate': 'Moves with it',
    alone: 'Stays',
  },
  holds: { 'notches-meet': 'Notches that met still meet.' },
  follows: {
    'crossing-line': 'The line that crosses the end is redrawn to the new corner.',
    'mates-of-crossing': 'Bands, collars and facings sewn to that line follow it.',
    sewing: 'The seam is sewn in that way from now on.',
    'mate-notch': 'Notches that meet it are marked anew unless they are to stay.',
  },
  problems: {
    'alter.no-seam': {
      message: 'This garment has no such seam.',
      remedy: 'Choose one of its seams.',
    },
    'alter.no-seam-to-true': {
      message: 'No seam of this garment has an end that can be carried on: all end on folds or darts.',
      remedy: 'Ease or gather the difference instead.',
    },
    'alter.seam-end-on-fold': {
      message: 'That end of the seam lies on a fold, at a dart or inside an edge, so it cannot be carried on.',
      remedy: 'True it at the other end.',
    },
    'alter.edge-used-up': {
      message: 'Nothing of the edge would be left.',
      remedy: 'Choose a smaller amount, or true the other side.',
    },
    'alter.no-notch': {
      message: 'This garment has no such notch.',
      remedy: 'Choose one of its notches.',
    },
    'alter.notch-off-edge': {
      message: 'The notch on “{piece}” would leave its edge.',
      remedy: 'Choose a smaller amount.',
    },
    'alter.ease-puckers': {
      message: '{piece} has {share} to ease in; a woven seam puckers over 4 %, save at a sleeve head cut on the round.',
      remedy: 'Ease less and true the rest away, or gather it.',
    },
    'alter.stretch-ripples': {
      message: '{piece} is to be stretched by {share}; a woven edge ripples over 3 %.',
      remedy: 'Lengthen it instead, or stretch only an edge cut on the bias or a knit.',
    },
    'alter.hardly-gathered': {
      message: '{piece} is only {share} longer than what it is gathered on to, which looks like puckers.',
      remedy: 'Ease it if it is under 4 %, or spread the piece to a fifth more and over.',
    },
    'alter.gathers-thick': {
      message: '{piece} is {share} longer than what it is gathered on to: over three times the length is thick to sew.',
      remedy: 'Gather less, or choose a very thin cloth.',
    },
  },
};
