/** A language's texts, by the module that collects them. */
const TEXTS = /words\/([\w-]+)\/(first|later)\.ts$/;

/** The file of a piece that is loaded by itself; a language's texts bear its tag. */
export function chunkFileName({ facadeModuleId }: { readonly facadeModuleId?: string | null }): string {
  const [, language, part] = TEXTS.exec(facadeModuleId ?? '') ?? [];
  return language === undefined ? 'assets/[name]-[hash].js' : `assets/texts-${language}-${part}-[hash].js`;
}
