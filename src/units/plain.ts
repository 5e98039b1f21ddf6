/** Small letters without accents: the form in which names and words are compared, however they were typed. */
export const plain = (text: string): string => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
