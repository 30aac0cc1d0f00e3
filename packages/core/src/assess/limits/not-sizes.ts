/** Rows of a sheet that are no size of a worksheet, each with the reason; looked for before the vocabulary. */
export const NOT_SIZES: readonly { readonly says: RegExp; readonly why: string }[] = [
  { says: /\btorque\b/, why: 'a torque belongs to tightening' },
  { says: /\bavailable\b/, why: 'what can be bought, not a limit' },
  { says: /^engine\b|^ignition\b|^governor\b|^spark plug\b/, why: 'read on the running engine' },
  { says: /^oil pump pressure\b|\boil pressure\b/, why: 'read on the running engine' },
  { says: /\bclearance hot\b/, why: 'a hot lash is set and checked under Set valves' },
  { says: /\bvalve lift at\b|\blift at the valve\b/, why: 'valve lift is read against the crank angle, not on a part' },
  { says: /\brocker ratio\b/, why: 'a ratio follows from two lifts' },
  {
    says: /^(?=.*\b(mass|weight)\b).*\b(with|and|including) (the |its )?((piston|gudgeon|wrist) )?(pins?|rings?)\b/,
    why: 'piston, pin and rings are weighed apart',
  },
  { says: /\bresurfacing\b/, why: 'how much may be cut; the head is measured by its thickness' },
  { says: /^head gasket piston protrusion\b/, why: 'chooses the gasket from the piston protrusion' },
  { says: /\bdepth in the bore at which\b/, why: 'where the gap is read, not a limit' },
  { says: /\bfeeler pull\b/, why: 'a feel for the clearance, which is measured from the parts' },
  { says: /\binterference in block\b/, why: 'the machine shop bores the block to the liner' },
  { says: /^(rod|main) bearing length\b|\bbush(ing)? length\b/, why: 'a size for ordering; no reading depends on it' },
  { says: /\badapter outside diameter\b/, why: 'a part that only this engine has' },
  { says: /\bflatness in [\d.]+ mm\b/, why: 'over a stretch of the face; the straight edge is read over the whole' },
  {
    says: /^(sleeve|cylinder liner|liner) out of round .*\barea\b/,
    why: 'at one stretch of the liner that is not read apart',
  },
];
