package dryfit.fit;

import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a finding together, piece by piece, inside one check. */
final class Found {
  private final String check;
  private final Severity severity;
  private final List<String> parts = new ArrayList<>();
  private final List<String> joints = new ArrayList<>();
  private double measured;
  private double limit;
  private double margin;
  private String unit = "mm";
  private Source source = Source.geometry("two pieces of wood cannot be in one place");

  private Found(String check, Severity severity) {
    this.check = check;
    this.severity = severity;
  }

  static Found of(String check, Severity severity) {
    return new Found(check, severity);
  }

  Found part(Part part) {
    parts.add(part.label());
    return this;
  }

  Found part(String label) {
    parts.add(label);
    return this;
  }

  Found joint(Joint joint) {
    joints.add(joint.label());
    return this;
  }

  /** A value that may not be less than its limit. */
  Found atLeast(double limit, double measured) {
    this.measured = measured;
    this.limit = limit;
    this.margin = measured - limit;
    return this;
  }

  /** A value that may not be more than its limit. */
  Found atMost(double limit, double measured) {
    this.measured = measured;
    this.limit = limit;
    this.margin = limit - measured;
    return this;
  }

  Found unit(String unit) {
    this.unit = unit;
    return this;
  }

  Found source(Source source) {
    this.source = source;
    return this;
  }

  Finding says(String message, String pointer, Vec3 at) {
    return new Finding(
        check,
        severity,
        parts,
        joints,
        measured,
        limit,
        margin,
        unit,
        source,
        message,
        pointer,
        at,
        Optional.empty());
  }
}
