/** For developers: benchmarks, run by hand in the profile {@code bench}. */
package headgate.verifier.bench;
