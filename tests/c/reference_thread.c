/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of numbers and threads. */
#include "reference.h"

#include <stdio.h>
#include <string.h>

static int32_t lead(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t flat = {0, 0};
    uint8_t text[1024];
    char starts[16];
    const size_t length = csv_bytes(row, "designation", text, sizeof text);
    const int32_t status = reference_thread(row, &thread);
    /* The call without structures says the same. */
    if (threadcalc_lead(text, length, &flat.numerator, &flat.denominator) != status) {
        return THREADCALC_STATUS_INTERNAL_FAULT;
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    snprintf(starts, sizeof starts, "%ld", (long)thread.starts);
    csv_exact(row, "lead_mm", flat);
    csv_exact(row, "pitch_mm", thread.pitch_mm);
    csv_exact(row, "lead_mm", thread.lead_mm);
    csv_text(row, "starts", starts);
    csv_text(row, "hand", threadcalc_hand_name(thread.hand));
    return status;
}

static int32_t read_number(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_ratio_t value;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    const int32_t status = threadcalc_read_number(text, length, &value, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        csv_exact(row, "value", value);
    }
    return status;
}

static int32_t designation(csv_row *row)
{
    uint8_t text[1024];
    threadcalc_thread_t thread;
    threadcalc_finding_t findings[16];
    char size[32], starts[16];
    size_t needed = 0, count = 0;
    const size_t length = csv_bytes(row, "text", text, sizeof text);
    int32_t status = threadcalc_thread_read(text, length, &thread, &row->error);
    if (status == THREADCALC_STATUS_OK) {
        status = reference_written(row, "canonical", &thread);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_thread_size_text(&thread, size, sizeof size, &needed, &row->error);
    }
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_thread_findings(&thread, findings, 16, &count, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    snprintf(starts, sizeof starts, "%ld", (long)thread.starts);
    csv_text(row, "form", threadcalc_form_name(thread.form));
    csv_text_or_none(row, "series", thread.series ? threadcalc_series_name(thread.series) : "");
    csv_text(row, "size", size);
    csv_text_or_none(row, "tolerance_class", thread.tolerance_class);
    csv_text_or_none(row, "side", thread.side ? threadcalc_side_name(thread.side) : "");
    csv_text(row, "hand", threadcalc_hand_name(thread.hand));
    csv_text(row, "starts", starts);
    csv_exact(row, "major_mm", thread.major_mm);
    reference_findings(row, findings, count);
    return status;
}

static int32_t limits(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_limits_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == THREADCALC_STATUS_OK) {
        status = threadcalc_limits(&thread, &found, sizeof found, &row->error);
    }
    if (status != THREADCALC_STATUS_OK) {
        return status;
    }
    csv_exact(row, "minor_min", reference_in_unit(row, found.minor_mm.low));
    csv_exact(row, "minor_max", reference_in_unit(row, found.minor_mm.high));
    csv_exact(row, "pitch_min", reference_in_unit(row, found.pitch_diameter_mm.low));
    csv_text(row, "unit", found.native_unit == THREADCALC_UNIT_INCH ? "inch"
                          : found.native_unit == THREADCALC_UNIT_MM ? "mm"
                                                                    : "neither unit");
    return status;
}

static int32_t profile_of(csv_row *row, threadcalc_profile_t *profile)
{
    threadcalc_thread_t thread;
    const int32_t status = reference_thread(row, &thread);
    return status == THREADCALC_STATUS_OK ? threadcalc_profile(&thread, profile, sizeof *profile, &row->error) : status;
}

static int32_t profile_metric(csv_row *row)
{
    threadcalc_profile_t profile;
    const int32_t status = profile_of(row, &profile);
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "triangle_height_mm", profile.triangle_height_mm);
        csv_double(row, "pitch_diameter_mm", profile.pitch_diameter_mm);
        csv_double(row, "minor_mm", profile.minor_mm);
        csv_double(row, "external_minor_mm", profile.external_minor_mm);
        csv_double(row, "stress_area_mm2", profile.stress_area_mm2);
    }
    return status;
}

static int32_t profile_unified(csv_row *row)
{
    threadcalc_profile_t profile;
    const int32_t status = profile_of(row, &profile);
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "pitch_diameter_in", profile.pitch_diameter_mm / 25.4);
        csv_double(row, "minor_in", profile.minor_mm / 25.4);
        csv_double(row, "external_minor_in", profile.external_minor_mm / 25.4);
        csv_double(row, "stress_area_in2", profile.stress_area_mm2 / 645.16);
    }
    return status;
}

static int32_t profile_trapezoidal(csv_row *row)
{
    threadcalc_profile_t profile;
    const int32_t status = profile_of(row, &profile);
    if (status == THREADCALC_STATUS_OK) {
        csv_double(row, "pitch_diameter_mm", profile.pitch_diameter_mm);
        csv_double(row, "minor_mm", profile.minor_mm);
        csv_double(row, "external_minor_mm", profile.external_minor_mm);
    }
    return status;
}

void reference_threads(void)
{
    csv_run("lead", lead);
    csv_run("read_number", read_number);
    csv_run("designation", designation);
    csv_run("minor_limits", limits);
    csv_run("profile_metric", profile_metric);
    csv_run("profile_trapezoidal", profile_trapezoidal);
    csv_run("profile_unified", profile_unified);
}
