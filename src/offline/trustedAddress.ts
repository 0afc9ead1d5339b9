interface ScriptUrlPolicies {
  createPolicy(
    name: string,
    rules: { createScriptURL(url: string): string },
  ): {
    createScriptURL(url: string): unknown;
  };
}

/**
 * The address of a script that runs beside the page. The page's content policy asks that it be vouched for where the
 * browser knows trusted types; each policy is made once, for one address.
 * @param policyName  as the content policy lists it
 */
export function trustedAddress(policyName: string, url: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: ScriptUrlPolicies };
  const policy = trustedTypes?.createPolicy(policyName, {
    createScriptURL: (asked) => {
      if (asked !== url) throw new TypeError(`only ${url} may be run, got ${asked}`);
      return asked;
    },
  });
  // What takes the address takes a vouched one, too, which the types don't know.
  return (policy?.createScriptURL(url) ?? url) as string;
}
