import type { SettingRule } from '@gudgeon/core/workbench';

/** How this engine's valves are set, with the working of turns, travel or gap. */
export function Rule({ rule }: { readonly rule: SettingRule }) {
  return (
    <details className="fold">
      <summary>How these valves are set, and the working</summary>
      <div className="stack">
        <p>{rule.words}</p>
        <p>
          Intake: {rule.intake}. Exhaust: {rule.exhaust}. From: {rule.origin}.
        </p>
        <ul className="stack">
          {rule.working.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
    </details>
  );
}
