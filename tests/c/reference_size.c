/* SPDX-License-Identifier: MIT OR Apache-2.0 */
/* The tables of coated threads and of lengths of engagement. */
#include "reference.h"

#include <string.h>

enum { OK = THREADCALC_STATUS_OK };

static int32_t coating_growth(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t thickness;
    threadcalc_coating_growth_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "thickness_um", &thickness);
    }
    if (status == OK) {
        status = threadcalc_coating_growth(&thread, &thickness, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "crest_mm", found.crest_mm);
        csv_exact(row, "pitch_diameter_mm", found.pitch_diameter_mm);
    }
    return status;
}

static int32_t before_coating(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t thinnest, thickest;
    threadcalc_limits_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = reference_number(row, "thinnest_um", &thinnest);
    }
    if (status == OK) {
        status = reference_number(row, "thickest_um", &thickest);
    }
    if (status == OK) {
        status = threadcalc_limits_before_coating(&thread, &thinnest, &thickest, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        reference_six_limits(row, &found);
    }
    return status;
}

static int32_t thickest_coating(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t found;
    int32_t status = reference_thread(row, &thread);
    if (status == OK) {
        status = threadcalc_thickest_coating_um(&thread, &found, &row->error);
    }
    if (status == OK) {
        csv_exact(row, "thickest_um", found);
    }
    return status;
}

static int32_t with_length(csv_row *row, threadcalc_thread_t *thread, threadcalc_ratio_t *length)
{
    const int32_t status = reference_thread(row, thread);
    return status == OK ? reference_number(row, "length_mm", length) : status;
}

static int32_t engagement_group(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t length;
    threadcalc_engagement_lengths_t found;
    int32_t status = with_length(row, &thread, &length);
    if (status == OK) {
        status = threadcalc_engagement_group(&thread, &length, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        csv_text(row, "group", strncmp(found.source, "ISO 965-1", 9) == 0 ? threadcalc_engagement_group_name(found.group)
                                                                         : "no source");
        csv_exact(row, "normal_over_mm", found.normal_over_mm);
        csv_exact(row, "normal_to_mm", found.normal_to_mm);
        csv_text(row, "confidence", threadcalc_confidence_name(found.confidence));
    }
    return status;
}

static int32_t recommended_class(csv_row *row)
{
    static const char *const sides[] = {"internal", "external"};
    static const char *const groups[] = {"S", "N", "L"};
    static const char *const qualities[] = {"fine", "medium", "coarse"};
    char text[16];
    size_t needed = 0;
    const int32_t side = csv_choice(row, "side", sides, 2), group = csv_choice(row, "group", groups, 3);
    const int32_t quality = csv_choice(row, "quality", qualities, 3);
    const int32_t status =
        threadcalc_recommended_class(side, group, quality, text, sizeof text, &needed, &row->error);
    if (status == OK) {
        csv_text(row, "class", needed > 1 ? text : "none");
    }
    return status;
}

static int32_t limits_at(csv_row *row)
{
    threadcalc_thread_t thread;
    threadcalc_ratio_t length;
    threadcalc_limits_t found;
    int32_t status = with_length(row, &thread, &length);
    if (status == OK) {
        status = threadcalc_limits_at(&thread, &length, &found, sizeof found, &row->error);
    }
    if (status == OK) {
        reference_six_limits(row, &found);
        csv_text(row, "confidence", threadcalc_confidence_name(found.confidence));
    }
    return status;
}

void reference_sizes(void)
{
    csv_run("engagement_group", engagement_group);
    csv_run("recommended_class", recommended_class);
    csv_run("limits_at", limits_at);
    csv_run("coating_growth", coating_growth);
    csv_run("before_coating", before_coating);
    csv_run("thickest_coating", thickest_coating);
}
