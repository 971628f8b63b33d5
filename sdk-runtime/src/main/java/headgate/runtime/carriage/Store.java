package headgate.runtime.carriage;

import headgate.api.vocabulary.SupplyKind;

/**
 * What the carriage carries for the heads and refills them from.
 *
 * @param kind what it holds
 * @param capacity how much it holds when full: a count, or litres for liquids
 * @param onHeadlandOnly true if heads are refilled on the headland only, false if anywhere
 * @param allAtOnce true if all heads are refilled at once, false if one after the other
 */
public record Store(SupplyKind kind, double capacity, boolean onHeadlandOnly, boolean allAtOnce) {}
