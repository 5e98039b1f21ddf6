/** What people's keyboards do to a message, undone; letters keep their case because names are told by it. */
const FRACTION = /[¼-¾⅐-⅞↉]/gu;
const SPACES = /[^\S\n]+/gu;
// Control, format (zero-width, bidirectional) and private characters carry no words.
const INVISIBLE = /[\p{Cf}\p{Co}\p{Cs}\p{Cn}]/gu;
const CONTROL = /[^\P{Cc}\n]/gu;
const PICTURES =
  /[\p{Extended_Pictographic}\p{Emoji_Modifier}\u{1F1E6}-\u{1F1FF}\u{FE00}-\u{FE0F}\u{20E3}]/gu;

export function normalise(text: string): string {
  return (
    text
      .replace(/\r\n?|[\u2028\u2029\u0085]/gu, '\n')
      .replace(/[′ʹ]/gu, "'")
      .replace(/[″ʺ]/gu, '"')
      // « French quotation marks » stand apart from what they enclose.
      .replace(/«[^\S\n]+/gu, '«')
      .replace(/[^\S\n]+»(?![\p{L}\p{N}])/gu, '»')
      .replace(FRACTION, ' $&')
      // The ordinal sign that Spanish keyboards have for the degree; NFKC would make it an "o".
      .replace(/º/gu, '°')
      // A dash between spaces or a long one ends a thought; NFKC would leave it as it is.
      .replace(/[—―]/gu, ' - ')
      .normalize('NFKC')
      .replace(INVISIBLE, '')
      .replace(CONTROL, ' ')
      .replace(PICTURES, ' ')
      .replace(/⁄/gu, '/')
      .replace(/[‐‑‒–−﹣]/gu, '-')
      .replace(/[“”„‟«»〝〞]/gu, '"')
      .replace(/[‘’‚‛´`]/gu, "'")
      .replace(/[×✕✖⨯⨉]/gu, 'x')
      .replace(/[∅⌀Øø](?=\s{0,2}\d)/gu, '⌀')
      .replace(SPACES, ' ')
  );
}

/** The form in which words are compared: lower case, without accents. */
export function fold(word: string): string {
  // ß, ł, ø and œ have no decomposition.
  return word
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ß/gu, 'ss')
    .replace(/ł/gu, 'l')
    .replace(/ø/gu, 'o')
    .replace(/œ/gu, 'oe')
    .replace(/æ/gu, 'ae');
}
