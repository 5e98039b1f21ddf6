/** A message as a member sees it: escapes and marks that cannot be seen taken away, buttons and menus listed. */
import type { Posted } from '../server/messages.ts';

export const seen = (content: string): string =>
  content.replace(/\u200b/g, '').replace(/\\([^0-9A-Za-z\s])/g, '$1');

export function screen({ content, components, files, private: alone }: Posted): string {
  const rows = components.flatMap((row) => {
    const buttons = row.components.flatMap((part) => ('options' in part ? [] : [`[${part.label}]`]));
    const menus = row.components.flatMap((part) =>
      'options' in part
        ? [`{${part.placeholder ?? ''}}`, ...part.options.map(({ label }) => `   ${label}`)]
        : [],
    );
    return [...(buttons.length > 0 ? [buttons.join(' ')] : []), ...menus];
  });
  return [
    ...(alone ? ['(only you can see this)'] : []),
    seen(content),
    ...files.map(({ name, description }) => `<picture ${name}: ${description}>`),
    ...rows,
  ].join('\n');
}
